package fairflame.screen.stock;

import fairflame.Refusal;
import fairflame.catalog.upkeep.PartChange;
import fairflame.catalog.upkeep.Preview;
import fairflame.catalog.upkeep.RefusedRow;
import fairflame.catalog.upkeep.TakenOver;
import fairflame.catalog.upkeep.Watch;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.Progress;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A supplier's price list under preview, without a window. */
public final class PriceListModel {
    /** Fields of a price list that can be told, by their words. */
    static final List<String> FIELDS = List.of("number", "cost", "list-price", "description");

    private static final int PAGE = 60;

    /** Rows of the preview, kind by kind. */
    public enum Kind {
        ADDED,
        CHANGED,
        VANISHED,
        REFUSED
    }

    private final StockWork work;
    private final LongWork runner;
    private final Runnable changed;
    private final StringProperty supplier = new SimpleStringProperty("");
    private final StringProperty file = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final StringProperty fileRefused = new SimpleStringProperty("");
    private final Map<String, StringProperty> headings = new LinkedHashMap<>();
    private final Map<String, StringProperty> headingRefused = new LinkedHashMap<>();
    private final ReadOnlyObjectWrapper<Optional<Preview>> preview = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<Kind> kind = new SimpleObjectProperty<>(Kind.CHANGED);
    private final ReadOnlyIntegerWrapper ends = new ReadOnlyIntegerWrapper();
    private int shown = PAGE;

    PriceListModel(StockWork work, LongWork runner, Runnable changed) {
        this.work = work;
        this.runner = new OneAtATime(runner);
        this.changed = changed;
        FIELDS.forEach(field -> {
            headings.put(field, new SimpleStringProperty(""));
            headingRefused.put(field, new SimpleStringProperty(""));
        });
        supplier.addListener((property, before, now) -> {
            var known = work.mapping(now);
            headings.forEach((field, heading) -> heading.set(known.getOrDefault(field, "")));
            preview.set(Optional.empty());
        });
        kind.addListener((property, before, now) -> shown = PAGE);
    }

    public StockWork work() {
        return work;
    }

    public StringProperty supplier() {
        return supplier;
    }

    /** Place of the price list. */
    public StringProperty file() {
        return file;
    }

    public StringProperty fileRefused() {
        return fileRefused;
    }

    /** Heading of a field in the supplier's list. */
    public StringProperty heading(String field) {
        return headings.computeIfAbsent(field, key -> new SimpleStringProperty(""));
    }

    public StringProperty headingRefused(String field) {
        return headingRefused.computeIfAbsent(field, key -> new SimpleStringProperty(""));
    }

    public StringProperty refusal() {
        return refusal;
    }

    public ReadOnlyObjectProperty<Optional<Preview>> preview() {
        return preview.getReadOnlyProperty();
    }

    /** Which rows of the preview are shown. */
    public ObjectProperty<Kind> kind() {
        return kind;
    }

    /** How many rows of the preview are of a kind. */
    public int count(Kind of) {
        return preview.get()
                .map(found -> of == Kind.REFUSED
                        ? found.refused().size()
                        : changes(found, of).size())
                .orElse(0);
    }

    private static List<PartChange> changes(Preview found, Kind of) {
        return switch (of) {
            case ADDED -> found.added();
            case CHANGED -> found.changed();
            case VANISHED -> found.vanished();
            case REFUSED -> List.of();
        };
    }

    /** The changes of the chosen kind, as many as were asked for. */
    public List<PartChange> changes() {
        return preview.get().map(found -> changes(found, kind.get())).orElse(List.of()).stream()
                .limit(shown)
                .toList();
    }

    /** The refused rows, as many as were asked for; none while another kind is chosen. */
    public List<RefusedRow> refusedRows() {
        return kind.get() == Kind.REFUSED
                ? preview.get().map(Preview::refused).orElse(List.of()).stream()
                        .limit(shown)
                        .toList()
                : List.of();
    }

    /** How many rows of the chosen kind are not shown yet. */
    public int hidden() {
        return Math.max(0, count(kind.get()) - shown);
    }

    public void more() {
        shown += PAGE;
    }

    /** Looks at the list; nothing is changed by it. While something is not told, a word stands beside its field. */
    public void look(BiFunction<Watch.Stage, Integer, String> tell) {
        headingRefused.values().forEach(said -> said.set(""));
        fileRefused.set("");
        refusal.set("");
        preview.set(Optional.empty());
        try {
            var from = from();
            var of = supplier.get();
            var told = told();
            runner.run(
                    "list-look",
                    progress -> work.preview(of, from, told, watch(progress, tell, 0)),
                    this::looked,
                    this::ended);
        } catch (Refusal refused) {
            beside(refused);
        }
    }

    private Path from() {
        if (supplier.get().isEmpty()) {
            throw Refusal.missing("supplier", "one of the suppliers above");
        }
        if (file.get().isBlank()) {
            throw Refusal.missing("file", "a price list, CSV or XLSX").at("file");
        }
        try {
            return Path.of(file.get().strip());
        } catch (InvalidPathException e) {
            throw Refusal.malformed("file", file.get(), "the place of a file").at("file");
        }
    }

    private Map<String, String> told() {
        var told = new LinkedHashMap<String, String>();
        headings.forEach((field, heading) -> {
            if (!heading.get().isBlank()) {
                told.put(field, heading.get().strip());
            }
        });
        for (var needed : List.of("number", "cost")) {
            if (!told.containsKey(needed)) {
                throw Refusal.missing("heading", "the heading as it stands in the list")
                        .at(needed);
            }
        }
        return told;
    }

    private void beside(Refusal refused) {
        var said = EditModel.told(refused);
        if (headings.containsKey(refused.where())) {
            headingRefused(refused.where()).set(said);
        } else if (refused.where().equals("file")) {
            fileRefused.set(said);
        } else {
            refusal.set(refused.getMessage());
        }
    }

    /** Takes in what looking found; opens with the rows that are refused, if any are. */
    public void looked(Preview found) {
        preview.set(Optional.of(found));
        for (var each : List.of(Kind.REFUSED, Kind.CHANGED, Kind.ADDED, Kind.VANISHED)) {
            if (count(each) > 0) {
                kind.set(each);
                break;
            }
        }
        shown = PAGE;
    }

    /** Takes the list under preview over, whole or not at all. */
    public void take(BiFunction<Watch.Stage, Integer, String> tell) {
        preview.get()
                .ifPresent(found -> runner.run(
                        "list-take",
                        progress -> work.take(
                                found, watch(progress, tell, found.changes().size())),
                        this::settled,
                        this::ended));
    }

    /** Takes an import back. */
    public void undo(int id) {
        runner.run(
                "list-undo",
                progress -> {
                    progress.look();
                    return work.undo(id);
                },
                this::settled,
                this::ended);
    }

    /** Counts what came to an end, one way or the other: what is shown is read again. */
    ReadOnlyIntegerProperty ends() {
        return ends.getReadOnlyProperty();
    }

    private void settled(TakenOver taken) {
        preview.set(Optional.empty());
        refusal.set("");
        changed.run();
        ends.set(ends.get() + 1);
    }

    private void ended(Ended ended) {
        refusal.set(ended.words());
        changed.run();
        ends.set(ends.get() + 1);
    }

    private static Watch watch(Progress progress, BiFunction<Watch.Stage, Integer, String> tell, int of) {
        return (stage, rows) -> {
            progress.at(of > 0 ? rows : -1, of > 0 ? of : -1);
            progress.say(tell.apply(stage, rows));
        };
    }
}
