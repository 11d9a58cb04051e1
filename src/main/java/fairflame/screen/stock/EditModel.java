package fairflame.screen.stock;

import fairflame.Refusal;
import fairflame.catalog.edit.ShopEdit;
import fairflame.catalog.edit.Spot;
import fairflame.catalog.upkeep.PastPrice;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.EditCheck;
import fairflame.visit.EditSheet;
import fairflame.visit.ShelfRow;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** One row under the pen, without a window: what is typed, what is wrong with it, what would become what. */
public final class EditModel {
    private final StockWork work;
    private final EditSheet sheet;
    private final LongWork runner;
    private final Runnable changed;
    private final Map<Spot, StringProperty> typed = new LinkedHashMap<>();
    private final Map<Spot, StringProperty> refused = new LinkedHashMap<>();
    private final StringProperty name = new SimpleStringProperty("");
    private final StringProperty value = new SimpleStringProperty("");
    private final StringProperty why = new SimpleStringProperty("");
    private final StringProperty whyRefused = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<EditCheck>> check = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper done = new ReadOnlyBooleanWrapper();
    private final ReadOnlyIntegerWrapper looks = new ReadOnlyIntegerWrapper();

    EditModel(StockWork work, EditSheet sheet, LongWork runner, Runnable changed) {
        this.work = work;
        this.runner = new OneAtATime(runner);
        this.sheet = sheet;
        this.changed = changed;
        for (var field : sheet.fields()) {
            var text = new SimpleStringProperty(field.value());
            text.addListener((property, before, now) -> touched(field.spot()));
            typed.put(field.spot(), text);
            refused.put(field.spot(), new SimpleStringProperty(""));
        }
        name.addListener((property, before, now) -> check.set(Optional.empty()));
        value.addListener((property, before, now) -> check.set(Optional.empty()));
        why.addListener((property, before, now) -> whyRefused.set(""));
    }

    /** Typing takes back what was said of the value before. */
    private void touched(Spot spot) {
        refused(spot).set("");
        refusal.set("");
        check.set(Optional.empty());
    }

    public EditSheet sheet() {
        return sheet;
    }

    public ShelfRow row() {
        return sheet.row();
    }

    public StringProperty typed(Spot spot) {
        return typed.computeIfAbsent(spot, key -> new SimpleStringProperty(""));
    }

    /** What is wrong with a field and what is allowed; empty while nothing is. */
    public StringProperty refused(Spot spot) {
        return refused.computeIfAbsent(spot, key -> new SimpleStringProperty(""));
    }

    /** Name of a further value, where the row takes some. */
    public StringProperty name() {
        return name;
    }

    public StringProperty value() {
        return value;
    }

    public StringProperty why() {
        return why;
    }

    public StringProperty whyRefused() {
        return whyRefused;
    }

    /** What is wrong and belongs to no single field. */
    public StringProperty refusal() {
        return refusal;
    }

    /** What would become what, once it was looked at and may be kept. */
    public ReadOnlyObjectProperty<Optional<EditCheck>> check() {
        return check.getReadOnlyProperty();
    }

    /** True once something was kept, taken out or taken back. */
    public ReadOnlyBooleanProperty done() {
        return done.getReadOnlyProperty();
    }

    private Map<Spot, String> values() {
        var values = new LinkedHashMap<Spot, String>();
        typed.forEach((spot, text) -> values.put(spot, text.get()));
        sheet.grows()
                .filter(grows -> !name.get().isBlank())
                .ifPresent(grows -> values.put(grows.in(name.get().strip()), value.get()));
        return values;
    }

    /** Looks at what keeping would change; tells what is refused beside its field. */
    public void look() {
        var values = values();
        runner.run(
                "edit-look",
                progress -> {
                    progress.look();
                    var found = work.check(sheet, values);
                    progress.look();
                    return found;
                },
                this::looked,
                Ended.in(refusal));
    }

    /** Counts the looks that have come to an end. */
    ReadOnlyIntegerProperty looks() {
        return looks.getReadOnlyProperty();
    }

    private void looked(EditCheck found) {
        typed.keySet()
                .forEach(spot -> refused(spot)
                        .set(Optional.ofNullable(found.refused().get(spot))
                                .map(EditModel::told)
                                .orElse("")));
        refusal.set(found.refusal().map(Throwable::getMessage).orElse(""));
        check.set(found.passes() ? Optional.of(found) : Optional.empty());
        looks.set(looks.get() + 1);
    }

    /** What a refusal says beside a field: the value met and what is allowed. */
    static String told(Refusal refusal) {
        return refusal.what() + " '" + refusal.value() + "': " + refusal.allowed();
    }

    public void keep() {
        var values = values();
        act(reason -> work.keep(sheet, values, reason));
    }

    /** Takes the row out. */
    public void remove() {
        act(reason -> work.remove(sheet, reason));
    }

    /** Takes a change of the row back. */
    public void takeBack(int number) {
        act(reason -> work.takeBack(number, reason));
    }

    private void act(Function<String, ShopEdit> act) {
        if (why.get().isBlank()) {
            whyRefused.set(told(Refusal.missing("reason", "a few words that others will understand later")));
            return;
        }
        var reason = why.get();
        runner.run(
                "edit-keep",
                progress -> {
                    progress.look();
                    return act.apply(reason);
                },
                kept -> {
                    refusal.set("");
                    changed.run();
                    done.set(true);
                },
                Ended.in(refusal));
    }

    /** What the part of this row has cost. */
    public List<PastPrice> prices() {
        return work.prices(sheet.row().spot().last());
    }

    /** Changes of this row, the last first. */
    public List<ShopEdit> history() {
        return sheet.fresh() ? List.of() : work.history(sheet.row());
    }

    /** Whether a change was taken back. */
    public boolean takenBack(ShopEdit edit) {
        return history().stream().anyMatch(other -> other.takesBack() == edit.number());
    }
}
