package fairflame.screen;

import fairflame.Refusal;
import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.PriceField;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import fairflame.invoice.report.TimeComparison;
import fairflame.invoice.report.TimeDecision;
import fairflame.screen.bench.BenchWork;
import fairflame.screen.stock.StockWork;
import fairflame.visit.EditCheck;
import fairflame.visit.EditSheet;
import fairflame.visit.JobHours;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import fairflame.visit.ShopEditing;
import fairflame.visit.Upkeep;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stock room's part of the door to a shop at work. */
final class StockDoor implements StockWork {
    private final Workplace workplace;
    private final Upkeep upkeep;
    private final ShopEditing editing;
    private final JobHours hours;

    StockDoor(Workplace workplace) {
        this.workplace = workplace;
        this.upkeep = new Upkeep(workplace);
        this.editing = new ShopEditing(workplace);
        this.hours = new JobHours(workplace);
    }

    @Override
    public String currency() {
        return workplace.library().shop().currency().getCode();
    }

    @Override
    public boolean own() {
        return editing.own();
    }

    @Override
    public boolean reread() {
        return editing.reread();
    }

    @Override
    public ShopEditing.Rows rows(Shelf shelf, String letters, int most) {
        return editing.rows(shelf, letters, most);
    }

    @Override
    public EditSheet open(ShelfRow row) {
        return editing.open(row);
    }

    @Override
    public EditSheet fresh(ShelfRow like) {
        return editing.fresh(like);
    }

    @Override
    public EditCheck check(EditSheet sheet, Map<Spot, String> typed) {
        return editing.check(sheet, typed);
    }

    @Override
    public ShopEdit keep(EditSheet sheet, Map<Spot, String> typed, String why) {
        return editing.keep(sheet, typed, why);
    }

    @Override
    public ShopEdit remove(EditSheet sheet, String why) {
        return editing.remove(sheet, why);
    }

    @Override
    public ShopEdit takeBack(int number, String why) {
        return editing.takeBack(number, why);
    }

    @Override
    public List<ShopEdit> history(ShelfRow row) {
        return editing.history(row);
    }

    @Override
    public List<ShopEdit> history() {
        return editing.history();
    }

    @Override
    public List<PastPrice> prices(String part) {
        return upkeep.history(part);
    }

    @Override
    public List<TimeComparison> hours() {
        return hours.comparisons();
    }

    @Override
    public List<TimeDecision> decisions(String task) {
        return hours.decisions(task);
    }

    @Override
    public BigDecimal standardTime(String task) {
        return hours.folderTime(task);
    }

    @Override
    public String taskTitle(String task) {
        return workplace.library().shop().task(task).title();
    }

    @Override
    public TimeDecision decide(String task, BigDecimal factor, String reason) {
        return hours.decide(task, factor, reason);
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
    public Preview preview(String supplier, Path file, Map<String, String> headings, Watch watch) {
        var pairs = headings.entrySet().stream()
                .map(entry -> PriceField.parse(entry.getKey()).word() + "=" + entry.getValue())
                .toList();
        return upkeep.preview(file, upkeep.remember(supplier, pairs), watch);
    }

    @Override
    public TakenOver take(Preview preview, Watch watch) {
        return upkeep.take(preview, watch);
    }

    @Override
    public TakenOver undo(int id) {
        return upkeep.undo(id);
    }

    @Override
    public List<TakenOver> imports() {
        return upkeep.imports().stream()
                .filter(taken -> !taken.file().equals(ShopEditing.BY_HAND))
                .toList();
    }
}
