package fairflame.screen.stock;

import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import fairflame.invoice.report.TimeComparison;
import fairflame.invoice.report.TimeDecision;
import fairflame.screen.bench.BenchWork;
import fairflame.visit.EditCheck;
import fairflame.visit.EditSheet;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import fairflame.visit.ShopEditing;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** What the stock room asks of the use cases. */
public interface StockWork {
    /** Code of the shop's currency. */
    String currency();

    /** Whether the shop is one's own and may be changed. */
    boolean own();

    /** Reads the shop's files again where somebody changed them by hand; true when they are others now. */
    boolean reread();

    /** Rows of a table that hold these letters, at most so many. */
    ShopEditing.Rows rows(Shelf shelf, String letters, int most);

    /** A row opened for a change. */
    EditSheet open(ShelfRow row);

    /** An empty row for the table of this one. */
    EditSheet fresh(ShelfRow like);

    /** What keeping these values would change; nothing is changed yet. */
    EditCheck check(EditSheet sheet, Map<Spot, String> typed);

    ShopEdit keep(EditSheet sheet, Map<Spot, String> typed, String why);

    /** Takes a row out of its table. */
    ShopEdit remove(EditSheet sheet, String why);

    /** Takes a change back. */
    ShopEdit takeBack(int number, String why);

    /** Changes of one row, the last first. */
    List<ShopEdit> history(ShelfRow row);

    /** All changes, the last first. */
    List<ShopEdit> history();

    /** What a part has cost, the first price first. */
    List<PastPrice> prices(String part);

    /** Hours worked against standard times, by task and condition. */
    List<TimeComparison> hours();

    /** What was decided of the times of a task, the last first. */
    List<TimeDecision> decisions(String task);

    /** Standard time of a task for one job and one piece as the shop's files have it, hours. */
    BigDecimal standardTime(String task);

    /** What a task is called. */
    String taskTitle(String task);

    /** A person multiplies the times of a task from now on. */
    TimeDecision decide(String task, BigDecimal factor, String reason);

    List<BenchWork.Option> suppliers();

    /** Headings of a supplier's list by field, as remembered; empty when it was never told. */
    Map<String, String> mapping(String supplier);

    /** What a price list would change; nothing is changed yet. Headings are remembered for the supplier. */
    Preview preview(String supplier, Path file, Map<String, String> headings, Watch watch);

    /** Takes a price list over whole, or nothing of it. */
    TakenOver take(Preview preview, Watch watch);

    /** Takes an import back. */
    TakenOver undo(int id);

    /** All price lists that were taken over, the last first. */
    List<TakenOver> imports();
}
