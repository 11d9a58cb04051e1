package fairflame.screen.stock;

import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.Shelf;
import fairflame.visit.ShelfRow;
import fairflame.visit.ShopEditing;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The stock room without a window: the table that is open, what is searched, and which page of it is shown. */
public final class StockModel {
    /** The step that takes price lists in. */
    public static final String IMPORT = "import";

    /** The step that holds standard times against hours worked. */
    public static final String HOURS = "hours";

    /** The step that shows all changes. */
    public static final String HISTORY = "changes";

    /** Rows shown before more are asked for. */
    static final int PAGE = 60;

    private final StockWork work;
    private final LongWork runner;
    private final PriceListModel list;
    private final StringProperty table = new SimpleStringProperty(Shelf.PARTS.id());
    private final StringProperty search = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyIntegerWrapper changes = new ReadOnlyIntegerWrapper();
    private int shown = PAGE;

    /** The stock room; {@code runner} runs what reads the whole shop anew. */
    public StockModel(StockWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.list = new PriceListModel(work, runner, this::changed);
        reread();
        table.addListener((property, before, now) -> {
            shown = PAGE;
            search.set("");
        });
        search.addListener((property, before, now) -> shown = PAGE);
    }

    public StockWork work() {
        return work;
    }

    /** The price list under preview. */
    public PriceListModel list() {
        return list;
    }

    /** Id of the open table, {@link #IMPORT} or {@link #HISTORY}. */
    public StringProperty table() {
        return table;
    }

    public StringProperty search() {
        return search;
    }

    /** Why the shop's files cannot be read again; empty while they can. */
    public StringProperty refusal() {
        return refusal;
    }

    /** Grows with every change that was kept. */
    public ReadOnlyIntegerProperty changes() {
        return changes.getReadOnlyProperty();
    }

    /** Reads the shop's files again where somebody changed them by hand. */
    public void reread() {
        if (!work.own()) {
            return;
        }
        refusal.set("");
        runner.run(
                "reread",
                progress -> work.reread(),
                another -> {
                    if (another) {
                        changed();
                    }
                },
                Ended.in(refusal));
    }

    void changed() {
        changes.set(changes.get() + 1);
    }

    /** Rows of the open table that hold the searched letters, as many as were asked for; none where no table is open. */
    public ShopEditing.Rows rows() {
        return Set.of(IMPORT, HOURS, HISTORY).contains(table.get())
                ? new ShopEditing.Rows(List.of(), 0)
                : work.rows(Shelf.parse(table.get()), search.get(), shown);
    }

    /** Shows more rows of the table. */
    public void more() {
        shown += PAGE;
        changed();
    }

    /** A row of the open table after which new ones can be made; absent where the table does not grow. */
    public Optional<ShelfRow> growing() {
        var shelf = Shelf.parse(table.get());
        var enough = shelf == Shelf.PARTS ? 1 : Integer.MAX_VALUE;
        return work.rows(shelf, "", enough).rows().stream()
                .filter(row -> shelf == Shelf.PARTS || (row.removable() && row.shelf() != Shelf.PLACES))
                .findFirst();
    }

    /** The sheet of a row. */
    public EditModel open(ShelfRow row) {
        return new EditModel(work, work.open(row), runner, this::changed);
    }

    /** The sheet of a new row like this one. */
    public EditModel fresh(ShelfRow like) {
        return new EditModel(work, work.fresh(like), runner, this::changed);
    }
}
