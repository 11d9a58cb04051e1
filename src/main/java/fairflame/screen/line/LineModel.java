package fairflame.screen.line;

import fairflame.Refusal;
import fairflame.gas.Firing;
import fairflame.gas.Layout;
import fairflame.gas.LayoutReader;
import fairflame.gas.Method;
import fairflame.gas.PressureProfile;
import fairflame.gas.Sizing;
import fairflame.screen.bench.BenchModel;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** The gas line of the visit on the bench, without a window. */
public final class LineModel {
    private final BenchModel bench;
    private final LineWork work;
    private final StringProperty chosen = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final StringProperty shown = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<Drawn>> now = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<LineWork.Way>> ways = new ReadOnlyObjectWrapper<>(List.of());
    private final Map<String, StringProperty> typed = new HashMap<>();

    /** A line with its sizes and pressures. */
    public record Drawn(Layout layout, Sizing sizing, PressureProfile firing) {}

    public LineModel(BenchModel bench, LineWork work) {
        this.bench = bench;
        this.work = work;
        bench.history().now().addListener((property, before, after) -> {
            if (!before.get("layout").equals(after.get("layout"))) {
                draw();
            }
        });
        draw();
    }

    public BenchModel bench() {
        return bench;
    }

    public LineWork work() {
        return work;
    }

    /** Id of the run or appliance that is being worked on; {@code source}; or empty. */
    public StringProperty chosen() {
        return chosen;
    }

    /** What of the layout cannot be, and what is allowed. */
    public StringProperty refusal() {
        return refusal;
    }

    /** Title of the way that is drawn; empty for the line as it is. */
    public StringProperty shown() {
        return shown;
    }

    /** The line as it is. */
    public ReadOnlyObjectProperty<Optional<Drawn>> now() {
        return now.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<LineWork.Way>> ways() {
        return ways.getReadOnlyProperty();
    }

    /** What is drawn: the line as it is, or with the changes of the way that is shown. */
    public Optional<Drawn> drawn() {
        return ways.get().stream()
                .filter(way -> way.title().equals(shown.get()))
                .findFirst()
                .map(way -> drawn(way.after()))
                .or(now::get);
    }

    public boolean started() {
        return bench.draft().has("layout");
    }

    public Optional<LayoutText> text() {
        return started() ? Optional.of(LayoutText.of(bench.draft().get("layout"))) : Optional.empty();
    }

    /** Begins with a meter, one run and the heater of the data plate. */
    public void start() {
        var draft = bench.draft();
        var fresh = LayoutText.fresh(
                draft.has("heater.fuel") ? draft.get("heater.fuel") : "natural",
                measure("heater.input", "400000 btu/h"),
                measure("heater.inletMinimum", "4 inwc"),
                measure("heater.inletMaximum", "14 inwc"));
        bench.history().change(before -> before.with("layout", fresh.toString()));
    }

    private String measure(String field, String otherwise) {
        var draft = bench.draft();
        return draft.has(field) ? draft.get(field) + " " + draft.get(field + ".unit") : otherwise;
    }

    /** Changes the layout by hand. */
    public void change(UnaryOperator<LayoutText> change) {
        text().ifPresent(text -> bench.history()
                .change(draft -> draft.with("layout", change.apply(text).toString())));
    }

    /** A field of the chosen run, appliance or source to bind a text field to. */
    public StringProperty typed(String id, String field) {
        return typed.computeIfAbsent(id + "/" + field, key -> {
            var value = new SimpleStringProperty(value(id, field));
            value.addListener((property, before, after) -> text().ifPresent(text -> bench.history()
                    .type(
                            "layout",
                            put(text, id, field, after == null ? "" : after).toString())));
            bench.history().now().addListener((property, before, after) -> value.set(value(id, field)));
            return value;
        });
    }

    private String value(String id, String field) {
        return text().map(text -> id.equals("source") ? text.source(field) : text.get(id, field))
                .orElse("");
    }

    private static LayoutText put(LayoutText text, String id, String field, String value) {
        return id.equals("source") ? text.withSource(field, value) : text.with(id, field, value);
    }

    private void draw() {
        if (!started()) {
            now.set(Optional.empty());
            return;
        }
        try {
            var layout = new LayoutReader(work.tables()).read(bench.draft().get("layout"));
            now.set(Optional.of(drawn(layout)));
            refusal.set("");
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
    }

    private Drawn drawn(Layout layout) {
        var tables = work.tables();
        return new Drawn(
                layout,
                Sizing.of(tables, layout, Method.usualFor(layout)),
                PressureProfile.of(tables, layout, Firing.all(layout)));
    }

    /** Asks for priced ways to make the line enough. */
    public void plan() {
        try {
            ways.set(work.ways(bench.draft()));
            refusal.set(ways.get().isEmpty() ? "" : refusal.get());
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
        }
    }
}
