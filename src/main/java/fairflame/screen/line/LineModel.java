package fairflame.screen.line;

import fairflame.Refusal;
import fairflame.gas.Firing;
import fairflame.gas.Layout;
import fairflame.gas.LayoutReader;
import fairflame.gas.Method;
import fairflame.gas.PressureProfile;
import fairflame.gas.Sizing;
import fairflame.quantity.Unit;
import fairflame.screen.bench.BenchModel;
import fairflame.screen.bench.Draft;
import fairflame.screen.bench.Judged;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ChangeListener;
import org.jspecify.annotations.Nullable;

/** The gas line of the visit on the bench, without a window. */
public final class LineModel {
    private static final String LAYOUT = "layout";
    private static final String SOURCE = "source";
    /** Where a refusal of the reader says that it is. */
    private static final Pattern FIELD = Pattern.compile("field ([A-Za-z]+(?:\\[\\d+])?(?:\\.[A-Za-z0-9-]+)*)");

    private static final Pattern MEASURE = Pattern.compile("\\s*([+-]?[\\d.,]+)\\s*(\\S.*)?");
    private final BenchModel bench;
    private final LineWork work;
    private final LongWork runner;
    private final StringProperty chosen = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final StringProperty shown = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<Drawn>> now = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<LineWork.Way>> ways = new ReadOnlyObjectWrapper<>(List.of());
    private final Map<String, StringProperty> typed = new HashMap<>();
    private final Map<String, StringProperty> allowed = new HashMap<>();
    private final ChangeListener<Draft> drafted;

    /** A line with its sizes and pressures. */
    public record Drawn(Layout layout, Sizing sizing, PressureProfile firing) {}

    /** The line of a visit; {@code runner} runs the search for ways. */
    public LineModel(BenchModel bench, LineWork work, LongWork runner) {
        this.bench = bench;
        this.work = work;
        this.runner = new OneAtATime(runner);
        this.drafted = (property, before, after) -> {
            if (!before.get(LAYOUT).equals(after.get(LAYOUT))) {
                draw();
            }
            typed.forEach((key, value) -> value.set(number(key)));
        };
        bench.history().now().addListener(drafted);
        draw();
    }

    /** Cuts the line loose from the visit: a line that is not shown any more is not worked out. */
    public void close() {
        bench.history().now().removeListener(drafted);
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
        return bench.draft().has(LAYOUT);
    }

    public Optional<LayoutText> text() {
        return started() ? Optional.of(LayoutText.of(bench.draft().get(LAYOUT))) : Optional.empty();
    }

    /** Begins with a meter, one run and the heater of the data plate. */
    public void start() {
        var draft = bench.draft();
        var fresh = LayoutText.fresh(
                draft.has("heater.fuel") ? draft.get("heater.fuel") : "natural",
                measure("heater.input", "400000 btu/h"),
                measure("heater.inletMinimum", "4 inwc"),
                measure("heater.inletMaximum", "14 inwc"));
        bench.history().change(before -> before.with(LAYOUT, fresh.toString()));
    }

    private String measure(String field, String otherwise) {
        var draft = bench.draft();
        return draft.has(field) ? draft.get(field) + " " + draft.get(field + ".unit") : otherwise;
    }

    /** Changes the layout by hand. */
    public void change(UnaryOperator<LayoutText> change) {
        text().ifPresent(text -> bench.history()
                .change(draft -> draft.with(LAYOUT, change.apply(text).toString())));
    }

    /** The number of a field of the chosen run, appliance or source, to bind a text field to; its unit stands apart. */
    public StringProperty typed(String id, String field) {
        return typed.computeIfAbsent(id + "/" + field, key -> {
            var value = new SimpleStringProperty(number(key));
            value.addListener((property, before, after) -> {
                if (!number(key).equals(after == null ? "" : after)) {
                    write(id, field, spelled(after == null ? "" : after.strip(), unit(id, field)));
                }
            });
            return value;
        });
    }

    /** The unit that a field is written in; its usual one while nothing is typed, empty for a bare number. */
    public String unit(String id, String field) {
        var match = MEASURE.matcher(value(id, field));
        return match.matches() && match.group(2) != null
                ? match.group(2)
                : LineUnits.of(field).stream().findFirst().map(Unit::spelling).orElse("");
    }

    /** Writes a field in another unit; the number stays as it is read off. */
    public void unit(String id, String field, String unit) {
        write(id, field, spelled(number(id + "/" + field), unit));
    }

    /** What is allowed in a field; empty while its value is fine. */
    public StringProperty allowed(String id, String field) {
        return allowed.computeIfAbsent(id + "/" + field, key -> new SimpleStringProperty(""));
    }

    private void write(String id, String field, String value) {
        text().ifPresent(text -> bench.history()
                .type(
                        LAYOUT + "/" + id + "/" + field,
                        LAYOUT,
                        put(text, id, field, value).toString()));
    }

    private static String spelled(String typed, String unit) {
        var match = MEASURE.matcher(typed);
        return match.matches() && match.group(2) == null && !unit.isEmpty() ? typed + " " + unit : typed;
    }

    private String number(String key) {
        var slash = key.indexOf('/');
        var field = key.substring(slash + 1);
        var value = value(key.substring(0, slash), field);
        var match = MEASURE.matcher(value);
        // A unit that has a key stands there; anything else stays in the field as it was typed.
        return match.matches() && known(field, match.group(2)) ? match.group(1) : value;
    }

    private static boolean known(String field, @Nullable String unit) {
        return unit == null
                || LineUnits.of(field).stream().anyMatch(each -> each.spelling().equals(unit));
    }

    private String value(String id, String field) {
        return text().map(text -> id.equals(SOURCE) ? text.source(field) : text.get(id, field))
                .orElse("");
    }

    private static LayoutText put(LayoutText text, String id, String field, String value) {
        return id.equals(SOURCE) ? text.withSource(field, value) : text.with(id, field, value);
    }

    private void draw() {
        refusal.set("");
        allowed.values().forEach(each -> each.set(""));
        if (!started()) {
            now.set(Optional.empty());
            return;
        }
        try {
            var layout = new LayoutReader(work.tables()).read(bench.draft().get(LAYOUT));
            now.set(Optional.of(drawn(layout)));
        } catch (Refusal refused) {
            refuse(refused);
        }
    }

    /** A refusal stands beside the field that it speaks of; one of the whole line stands above the drawing. */
    private void refuse(Refusal refused) {
        var match = FIELD.matcher(refused.where() + ", " + refused.what());
        var place = match.find() ? match.group(1) : "";
        var told = text().flatMap(text -> allowed.keySet().stream()
                .filter(key -> place(text, key).equals(place))
                .findFirst());
        told.ifPresentOrElse(
                key -> allowed(key).set(refused.allowed()), () -> refusal.set(String.valueOf(refused.getMessage())));
    }

    private StringProperty allowed(String key) {
        var slash = key.indexOf('/');
        return allowed(key.substring(0, slash), key.substring(slash + 1));
    }

    private static String place(LayoutText text, String key) {
        var slash = key.indexOf('/');
        var id = key.substring(0, slash);
        var field = key.substring(slash + 1);
        if (id.equals(SOURCE)) {
            return field.contains(".") ? field : SOURCE + "." + field;
        }
        return text.place(id) + "." + field;
    }

    private Drawn drawn(Layout layout) {
        var tables = work.tables();
        return new Drawn(
                layout,
                Sizing.of(tables, layout, Method.usualFor(layout)),
                PressureProfile.of(tables, layout, Firing.all(layout)));
    }

    /** Moves a node of the drawing by so many ems, and all behind it. */
    void move(String node, double right, double down) {
        drawn().ifPresent(shown -> bench.history()
                .change(draft -> LinePlaces.of(shown.layout(), draft).moved(node, right, down)));
    }

    /** Puts every node back where the drawing places it by itself. */
    void tidy() {
        bench.history().change(LinePlaces::tidied);
    }

    /** Takes a run and all that hangs on it away, or an appliance with the run that leads to it alone. */
    void remove(String id) {
        change(text -> text.without(id));
        chosen.set("");
    }

    /** Asks for priced ways to make the line enough. */
    public void plan() {
        var draft = bench.draft();
        var danger = bench.judged().get().filter(Judged::danger).isPresent();
        runner.run(
                "ways",
                progress -> {
                    if (danger) {
                        throw Refusal.stopWork("prices of a gas line", draft.get("id"), "a stop-work sheet");
                    }
                    return work.ways(draft, progress);
                },
                found -> {
                    ways.set(found);
                    refusal.set(found.isEmpty() ? "" : refusal.get());
                },
                Ended.in(refusal));
    }
}
