package fairflame.screen;

import fairflame.Refusal;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceField;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.screen.bench.BenchWork;
import fairflame.screen.stock.StockWork;
import fairflame.visit.Upkeep;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stock room's part of the door to a shop at work. */
final class StockDoor implements StockWork {
    private final Workplace workplace;
    private final Upkeep upkeep;

    StockDoor(Workplace workplace) {
        this.workplace = workplace;
        this.upkeep = new Upkeep(workplace);
    }

    @Override
    public List<Table> tables() {
        return new ShelvesOfShop(workplace.library()).tables();
    }

    @Override
    public List<PastPrice> history(String part) {
        return upkeep.history(part);
    }

    @Override
    public List<BenchWork.Option> suppliers() {
        return workplace.library().shop().suppliers().stream()
                .map(supplier -> new BenchWork.Option(supplier.id(), supplier.name()))
                .toList();
    }

    @Override
    public Map<String, String> mapping(String supplier) {
        var told = new HashMap<String, String>();
        try {
            upkeep.mapping(supplier).columns().forEach((field, heading) -> told.put(field.word(), heading));
        } catch (Refusal.Missing neverTold) {
            told.clear();
        }
        return told;
    }

    @Override
    public Preview preview(String supplier, Path file, Map<String, String> headings) {
        var pairs = headings.entrySet().stream()
                .map(entry -> PriceField.parse(entry.getKey()).word() + "=" + entry.getValue())
                .toList();
        return upkeep.preview(file, upkeep.remember(supplier, pairs));
    }

    @Override
    public TakenOver take(Preview preview) {
        return upkeep.take(preview);
    }

    @Override
    public TakenOver undo(int id) {
        return upkeep.undo(id);
    }

    @Override
    public List<TakenOver> imports() {
        return upkeep.imports();
    }
}
