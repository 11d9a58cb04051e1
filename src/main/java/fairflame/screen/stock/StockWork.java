package fairflame.screen.stock;

import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.screen.bench.BenchWork;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What the stock room asks of the use cases. */
public interface StockWork {
    /** Everything the shop keeps, table by table. */
    List<Table> tables();

    /** What a part has cost, the first price first. */
    List<PastPrice> history(String part);

    List<BenchWork.Option> suppliers();

    /** Headings of a supplier's list by field, as remembered; empty when it was never told. */
    Map<String, String> mapping(String supplier);

    /** What a price list would change; nothing is changed yet. Headings are remembered for the supplier. */
    Preview preview(String supplier, Path file, Map<String, String> headings);

    /** Takes a price list over whole, or nothing of it. */
    TakenOver take(Preview preview);

    /** Takes an import back. */
    TakenOver undo(int id);

    /** All imports, the last first. */
    List<TakenOver> imports();

    /**
     * One table of the shop.
     *
     * @param id names it in words and style
     * @param rows cells in the order of the headings
     */
    record Table(String id, List<String> headings, List<List<String>> rows) {
        public Table {
            headings = List.copyOf(headings);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }
}
