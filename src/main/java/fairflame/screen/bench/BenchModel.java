package fairflame.screen.bench;

import fairflame.diagnosis.Check;
import fairflame.diagnosis.ReadingVerdict;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableMap;

/** The bench without a window: the draft, what the use cases say of it, and what is being looked at. */
public final class BenchModel {
    private final BenchWork work;
    private final DraftHistory history;
    private final ReadOnlyObjectWrapper<Optional<Judged>> judged = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableMap<String, String> refused = FXCollections.observableMap(new LinkedHashMap<>());
    private final StringProperty step = new SimpleStringProperty(Steps.WHO);
    private final StringProperty choice = new SimpleStringProperty("");
    private final Map<String, StringProperty> typed = new LinkedHashMap<>();
    private final Map<String, StringProperty> allowed = new LinkedHashMap<>();

    public BenchModel(BenchWork work, Draft start) {
        this.work = work;
        this.history = new DraftHistory(start, work::keep);
        history.now().addListener((property, before, now) -> judge());
        judge();
    }

    public BenchWork work() {
        return work;
    }

    public DraftHistory history() {
        return history;
    }

    public Draft draft() {
        return history.get();
    }

    /** What the use cases say; empty while there is too little to say anything. */
    public ReadOnlyObjectProperty<Optional<Judged>> judged() {
        return judged.getReadOnlyProperty();
    }

    /** What is allowed, by field whose value was refused. */
    public ObservableMap<String, String> refused() {
        return refused;
    }

    /** Id of the step that is open, see {@link Steps}. */
    public StringProperty step() {
        return step;
    }

    /** Id of the choice on the paper that is open. */
    public StringProperty choice() {
        return choice;
    }

    /** A field of the draft to bind a text field to. */
    public StringProperty typed(String field) {
        return typed.computeIfAbsent(field, key -> {
            var value = new SimpleStringProperty(draft().get(key));
            value.addListener((property, before, now) -> history.type(key, now == null ? "" : now));
            history.now().addListener((property, before, now) -> value.set(now.get(key)));
            return value;
        });
    }

    /** What is allowed in a field; empty while its value is fine. */
    public StringProperty allowed(String field) {
        return allowed.computeIfAbsent(field, key -> new SimpleStringProperty(refused.getOrDefault(key, "")));
    }

    /** The number of the latest reading of a check in the draft. */
    public Optional<Integer> lastReading(String check) {
        return draft().last("reading", "check", check);
    }

    /** Opens the latest reading of a check for typing, or a new one when there is none or another is wanted. */
    public int reading(Check check, boolean another) {
        var last = lastReading(check.id());
        if (last.isPresent() && !another) {
            return last.get();
        }
        var number = draft().nextNumber("reading");
        history.change(draft -> ReadingDefaults.of(check).fill(draft, number));
        return number;
    }

    /** The verdict on a reading of the draft. */
    public Optional<ReadingVerdict> verdict(int number) {
        var check = draft().get("reading." + number + ".check");
        var place = Steps.placed(draft(), refused.keySet()).stream()
                .filter(other -> draft().get("reading." + other + ".check").equals(check))
                .toList()
                .indexOf(number);
        // Verdicts come in the usual order of work; those of one check keep the order in which it was read.
        return judged.get().stream()
                .flatMap(found -> found.verdicts().stream())
                .filter(verdict -> verdict.reading().check().equals(check))
                .skip(Math.max(0, place))
                .filter(verdict -> place >= 0)
                .findFirst();
    }

    /** Ids of the checks to show: those read, by their place in the usual order of work, then the next ones. */
    public List<String> checks() {
        var taken = draft().numbers("reading").stream()
                .map(number -> draft().get("reading." + number + ".check"))
                .filter(id -> !id.isEmpty())
                .distinct()
                .sorted(java.util.Comparator.comparingInt(
                        id -> work.knowledge().check(id).effort().step()))
                .toList();
        var shown = new LinkedHashSet<>(taken);
        judged.get().ifPresent(found -> found.next().forEach(next -> shown.add(next.check())));
        shown.removeIf(id -> !known(id));
        return List.copyOf(shown);
    }

    /** The step that the evidence asks for next: the first suggested check, or the finding when none is. */
    public String onward() {
        return judged.get().map(Judged::next).stream()
                .flatMap(List::stream)
                .map(next -> next.check())
                .filter(id -> !Steps.ofCheck(id).equals(step.get()))
                .findFirst()
                .map(id -> known(id) ? Steps.ofCheck(id) : Steps.GATES)
                .orElse(Steps.FINDING);
    }

    private boolean known(String check) {
        return work.knowledge().checks().stream().anyMatch(known -> known.id().equals(check));
    }

    /** Test leads placed and not recorded as removed. */
    public long leadsPlaced() {
        return draft().numbers("lead").stream()
                .filter(number -> !draft().get("lead." + number + ".removed").equals("yes"))
                .count();
    }

    private void judge() {
        var answer = new Examiner(work).ask(draft());
        if (!refused.equals(answer.refused())) {
            refused.keySet().retainAll(answer.refused().keySet());
            refused.putAll(answer.refused());
            allowed.forEach((field, words) -> words.set(refused.getOrDefault(field, "")));
        }
        judged.set(answer.judged());
        judged.get().flatMap(Judged::quote).ifPresent(quote -> {
            if (quote.choices().stream().noneMatch(offered -> offered.id().equals(choice.get()))) {
                choice.set(quote.choices().get(0).id());
            }
        });
    }
}
