package fairflame.screen.stock;

import fairflame.Refusal;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.catalog.upkeep.Preview;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The stock room without a window: the table that is open, what is searched, and a price list under preview. */
public final class StockModel {
    /** The step that takes price lists in. */
    public static final String IMPORT = "import";

    /** Fields of a price list that can be told, by their words. */
    static final List<String> FIELDS = List.of("number", "cost", "list-price", "description");

    private static final int MOST_ROWS = 200;

    private final StockWork work;
    private List<StockWork.Table> tables;
    private final StringProperty table = new SimpleStringProperty("parts");
    private final StringProperty search = new SimpleStringProperty("");
    private final StringProperty supplier = new SimpleStringProperty("");
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final Map<String, StringProperty> headings = new LinkedHashMap<>();
    private final ReadOnlyObjectWrapper<Optional<Preview>> preview = new ReadOnlyObjectWrapper<>(Optional.empty());

    public StockModel(StockWork work) {
        this.work = work;
        this.tables = work.tables();
        FIELDS.forEach(field -> headings.put(field, new SimpleStringProperty("")));
        supplier.addListener((property, before, now) -> {
            var known = work.mapping(now);
            headings.forEach((field, heading) -> heading.set(known.getOrDefault(field, "")));
            preview.set(Optional.empty());
        });
    }

    public StockWork work() {
        return work;
    }

    public List<StockWork.Table> tables() {
        return tables;
    }

    /** Id of the open table, or {@link #IMPORT}. */
    public StringProperty table() {
        return table;
    }

    public StringProperty search() {
        return search;
    }

    public StringProperty supplier() {
        return supplier;
    }

    /** Place of the price list. */
    public StringProperty file() {
        return file;
    }

    /** Heading of a field in the supplier's list. */
    public StringProperty heading(String field) {
        return headings.computeIfAbsent(field, key -> new SimpleStringProperty(""));
    }

    public StringProperty refusal() {
        return refusal;
    }

    public ReadOnlyObjectProperty<Optional<Preview>> preview() {
        return preview.getReadOnlyProperty();
    }

    public Optional<StockWork.Table> open() {
        return tables.stream().filter(each -> each.id().equals(table.get())).findFirst();
    }

    /** Rows of the open table that hold the searched letters, at most 200. */
    public List<List<String>> rows() {
        var letters = search.get().strip().toLowerCase(Locale.ROOT);
        return open().map(StockWork.Table::rows).orElse(List.of()).stream()
                .filter(row -> String.join(" ", row).toLowerCase(Locale.ROOT).contains(letters))
                .limit(MOST_ROWS)
                .toList();
    }

    public List<PastPrice> history(String part) {
        return work.history(part);
    }

    /** Looks at a price list without changing anything. */
    public void look() {
        act(() -> {
            var told = new LinkedHashMap<String, String>();
            headings.forEach((field, heading) -> {
                if (!heading.get().isBlank()) {
                    told.put(field, heading.get().strip());
                }
            });
            preview.set(
                    Optional.of(work.preview(supplier.get(), Path.of(file.get().strip()), told)));
        });
    }

    /** Takes the list under preview over. */
    public void take() {
        act(() -> {
            preview.get().ifPresent(work::take);
            preview.set(Optional.empty());
            tables = work.tables();
        });
    }

    /** Takes an import back. */
    public void undo(int id) {
        act(() -> {
            work.undo(id);
            tables = work.tables();
            preview.set(Optional.empty());
        });
    }

    private void act(Runnable act) {
        try {
            act.run();
            refusal.set("");
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
    }
}
