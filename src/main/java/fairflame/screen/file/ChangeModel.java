package fairflame.screen.file;

import fairflame.Refusal;
import fairflame.agreement.AddedLine;
import fairflame.agreement.Change;
import fairflame.agreement.ChangeDraft;
import fairflame.catalog.PermitNeed;
import fairflame.quote.Duties;
import fairflame.quote.Line;
import fairflame.quote.LineKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A change of signed work: written, shown with its new total, then signed by the customer. */
public final class ChangeModel {
    private final FileModel file;
    private final Form form = new Form();
    private final StringProperty kind = new SimpleStringProperty(LineKind.LABOUR.word());
    private final ObjectProperty<List<AddedLine>> added;
    private final Set<String> removed = new TreeSet<>();
    private final BooleanProperty gas = new SimpleBooleanProperty(false);
    private final ReadOnlyObjectWrapper<Optional<ChangeDraft>> draft = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final BooleanProperty authorised = new SimpleBooleanProperty(false);
    private final BooleanProperty electronic = new SimpleBooleanProperty(false);
    private final BooleanProperty drawn = new SimpleBooleanProperty(false);
    private final StringProperty role;

    public ChangeModel(FileModel file) {
        this.file = file;
        this.added = new SimpleObjectProperty<>(
                List.copyOf(file.job().actuals().work().toSign()));
        var customer = file.job().agreed().signed().quote().customer();
        this.role = new SimpleStringProperty(customer.role().isEmpty() ? "owner" : customer.role());
        form.with("change-quantity", "1")
                .with("change-unit", "each")
                .beside("reason of a change order", "change-reason")
                .beside("name of the signer", "change-name");
    }

    public Form form() {
        return form;
    }

    /** Kind of the line being written, as in data files. */
    public StringProperty kind() {
        return kind;
    }

    /** Lines to be added; at first those that cover what goes beyond. */
    public ReadOnlyObjectProperty<List<AddedLine>> added() {
        return added;
    }

    public List<Line> lines() {
        return file.job().agreed().lines();
    }

    public boolean removed(String line) {
        return removed.contains(line);
    }

    public void remove(String line, boolean yes) {
        if (yes) {
            removed.add(line);
        } else {
            removed.remove(line);
        }
        stale();
    }

    /** Whether the added work is gas work: licence, permit and pressure test are asked for. */
    public BooleanProperty gas() {
        return gas;
    }

    /** The change as the customer would sign it; empty until it is shown. */
    public ReadOnlyObjectProperty<Optional<ChangeDraft>> draft() {
        return draft.getReadOnlyProperty();
    }

    public BooleanProperty authorised() {
        return authorised;
    }

    public BooleanProperty electronic() {
        return electronic;
    }

    public BooleanProperty drawn() {
        return drawn;
    }

    public StringProperty role() {
        return role;
    }

    /** Another change is another promise: what was accepted before does not count. */
    private void stale() {
        draft.set(Optional.empty());
        authorised.set(false);
        electronic.set(false);
        drawn.set(false);
    }

    /** Adds the line that is typed. */
    public boolean add() {
        return form.submit(() -> {
            var chosen = Arrays.stream(LineKind.values())
                    .filter(each -> each.word().equals(kind.get()))
                    .findFirst()
                    .orElse(LineKind.LABOUR);
            var currency = file.job().agreed().signed().quote().currency();
            var line = new AddedLine(
                    chosen,
                    form.text("change-item"),
                    form.words("change-words"),
                    form.number("change-quantity"),
                    form.words("change-unit"),
                    form.money("change-price", currency),
                    form.words("change-reason"),
                    "agreed on the job");
            var more = new ArrayList<>(added.get());
            more.add(line);
            added.set(List.copyOf(more));
            List.of("change-item", "change-words", "change-price").forEach(field -> form.with(field, ""));
            stale();
        });
    }

    /** Leaves out the line at a place of {@link #added}. */
    public void drop(int place) {
        var fewer = new ArrayList<>(added.get());
        fewer.remove(place);
        added.set(List.copyOf(fewer));
        stale();
    }

    private Change change() {
        var duties = gas.get() ? new Duties(true, PermitNeed.YES, true) : Duties.NONE;
        return new Change(form.words("change-reason"), added.get(), List.copyOf(removed), duties, List.of());
    }

    /** Computes what the job would come to. */
    public boolean show() {
        return form.submit(() -> {
            stale();
            draft.set(Optional.of(file.work().draft(file.quote(), change())));
        });
    }

    /** What the customer agrees to, once the draft is shown. */
    public List<String> consent() {
        return draft.get()
                .map(shown -> file.work().consent(file.quote(), shown))
                .orElse(List.of());
    }

    /** Signs and seals what was shown. */
    public boolean sign(List<List<Integer>> strokes) {
        return file.act(form, "file.said.change", () -> {
            var shown = draft.get().orElseThrow(() -> Refusal.missing("draft of the change", "the change shown first"));
            if (!authorised.get() || !electronic.get()) {
                throw Refusal.missing("consent", "both texts accepted by the customer");
            }
            if (!drawn.get()) {
                throw Refusal.missing("signature", "a drawn signature");
            }
            var act = new FileWork.Act(form.words("change-name"), role.get(), strokes);
            file.work().sign(file.quote(), shown.change(), act);
        });
    }
}
