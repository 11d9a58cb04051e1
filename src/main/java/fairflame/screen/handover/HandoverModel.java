package fairflame.screen.handover;

import fairflame.agreement.SignedRevision;
import fairflame.quote.Choice;
import fairflame.quote.Quote;
import fairflame.screen.kit.LongWork;
import fairflame.screen.kit.OneAtATime;
import fairflame.visit.LineStory;
import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableSet;

/** The customer's page without a window. Nothing is chosen or agreed to before the customer does it. */
public final class HandoverModel {
    private final HandoverWork work;
    private final Offered offered;
    private final String witness;
    private final LongWork runner;
    private final StringProperty choice = new SimpleStringProperty("");
    private final StringProperty name = new SimpleStringProperty("");
    private final StringProperty role = new SimpleStringProperty("");
    private final ObservableSet<String> accepted = FXCollections.observableSet();
    private final BooleanProperty drawn = new SimpleBooleanProperty(false);
    private final BooleanProperty byName = new SimpleBooleanProperty(false);
    private final StringProperty refusal = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<SignedRevision>> signed =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * What is laid before the customer.
     *
     * @param line the gas line before and after the suggested work; empty where the work is not on the line
     */
    public record Offered(Quote quote, Optional<LineStory> line) {}

    /** The page of a quote; {@code runner} runs the signing with its papers. */
    public HandoverModel(HandoverWork work, Offered offered, String witness, LongWork runner) {
        this.work = work;
        this.offered = offered;
        this.witness = witness;
        this.runner = new OneAtATime(runner);
        this.role.set(offered.quote().customer().role());
        // Another choice is another promise: what was accepted for the former one does not count.
        choice.addListener((property, before, now) -> accepted.clear());
    }

    public HandoverWork work() {
        return work;
    }

    public Quote quote() {
        return offered.quote();
    }

    /** The gas line before and after the suggested work. */
    public Optional<LineStory> line() {
        return offered.line();
    }

    /** Runs what makes papers. */
    LongWork runner() {
        return runner;
    }

    public String language() {
        return quote().language();
    }

    public StringProperty choice() {
        return choice;
    }

    public StringProperty name() {
        return name;
    }

    public StringProperty role() {
        return role;
    }

    /** Ids of the promises that the customer accepted. */
    public ObservableSet<String> accepted() {
        return accepted;
    }

    public BooleanProperty drawn() {
        return drawn;
    }

    /** True while the typed name shall stand as the signature, for who cannot draw or has no more than a keyboard. */
    public BooleanProperty byName() {
        return byName;
    }

    /** Why signing was refused; empty when it was not. */
    public StringProperty refusal() {
        return refusal;
    }

    public ReadOnlyObjectProperty<Optional<SignedRevision>> signed() {
        return signed.getReadOnlyProperty();
    }

    /** Takes over what was sealed from a returned paper. */
    public void sealed(SignedRevision revision) {
        refusal.set("");
        signed.set(Optional.of(revision));
    }

    public Optional<Choice> taken() {
        return quote().choices().stream()
                .filter(each -> each.id().equals(choice.get()))
                .findFirst();
    }

    /** What has to be accepted for the choice taken; none before one is taken. */
    public List<HandoverWork.Promise> promises() {
        return taken().map(taken -> work.promises(quote(), taken.id(), language()))
                .orElse(List.of());
    }

    /** Key of the first thing that still has to be done before signing; empty when all is done. */
    public StringBinding missing() {
        return Bindings.createStringBinding(this::next, choice, name, accepted, drawn, byName);
    }

    private String next() {
        if (taken().isEmpty()) {
            return "handover.missing.choice";
        }
        for (var promise : promises()) {
            if (!accepted.contains(promise.id())) {
                return promise.declined().isEmpty() ? "handover.missing.consent" : "handover.missing.declined";
            }
        }
        if (name.get().isBlank()) {
            return "handover.missing.name";
        }
        return drawn.get() || byName.get() ? "" : "handover.missing.stroke";
    }

    /**
     * Signs; a refusal is shown and nothing is kept.
     *
     * @param strokes as drawn; left out where the typed name is the signature
     */
    public void sign(List<List<Integer>> strokes) {
        if (!next().isEmpty()) {
            return;
        }
        refusal.set("");
        var seen = byName.get() ? List.<List<Integer>>of() : strokes;
        var act = new HandoverWork.Act(name.get().strip(), role.get(), promises(), seen, witness);
        var taken = choice.get();
        runner.run(
                "sign",
                progress -> work.sign(quote(), taken, act, progress),
                done -> signed.set(Optional.of(done)),
                ended -> refusal.set(ended.refusal()
                        .map(refused -> work.told(refused, language()))
                        .orElse(ended.words())));
    }
}
