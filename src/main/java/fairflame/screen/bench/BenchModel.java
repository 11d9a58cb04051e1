package fairflame.screen.bench;

import fairflame.Refusal;
import fairflame.diagnosis.Check;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.ReadingVerdict;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableMap;

/** The bench without a window: the draft, what the use cases say of it, and what is being looked at. */
public final class BenchModel {
    /** Gates whose sheet was printed: another danger asks for another sheet. */
    private static final String PRINTED = "stop.printed";

    private final BenchWork work;
    private final DraftHistory history;
    private final ReadOnlyObjectWrapper<Optional<Judged>> judged = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableMap<String, String> refused = FXCollections.observableMap(new LinkedHashMap<>());
    private final StringProperty step = new SimpleStringProperty(Steps.WHO);
    private final StringProperty choice = new SimpleStringProperty("");
    private final Map<String, StringProperty> typed = new LinkedHashMap<>();
    private final Map<String, StringProperty> allowed = new LinkedHashMap<>();
    private final Map<String, Integer> opened = new HashMap<>();

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

    /** Numbers of the readings of a check, in the order in which they were taken. */
    public List<Integer> readings(String check) {
        return draft().numbers("reading").stream()
                .filter(number -> draft().get("reading." + number + ".check").equals(check))
                .toList();
    }

    /** Opens a reading of a check for typing: the one shown last, else the latest; a new one when there is none. */
    public int reading(Check check) {
        var taken = readings(check.id());
        var shown = opened.getOrDefault(check.id(), 0);
        return taken.contains(shown) ? shown : lastReading(check.id()).orElseGet(() -> fresh(check));
    }

    /** Begins another reading of a check and opens it. */
    public void again(Check check) {
        show(check, fresh(check));
    }

    /** Opens this reading of a check. */
    public void show(Check check, int number) {
        opened.put(check.id(), number);
        reopen(check);
    }

    /** Takes a reading away; the one before it is shown, or a fresh one. Undo brings it back. */
    public void remove(Check check, int number) {
        history.change(draft -> draft.without("reading." + number));
        reopen(check);
    }

    private void reopen(Check check) {
        step.set(Steps.MORE);
        step.set(Steps.ofCheck(check.id()));
    }

    private int fresh(Check check) {
        var number = draft().nextNumber("reading");
        history.change(draft -> ReadingDefaults.of(check).fill(draft, number));
        return number;
    }

    /** The verdict on a reading of the draft; empty while its value is refused or nothing can be said of it. */
    public Optional<ReadingVerdict> verdict(int number) {
        // Verdicts come in an order of their own: the one of this very reading is told by what was read and how.
        return read("reading." + number + ".")
                .flatMap(reading -> judged.get().stream()
                        .flatMap(found -> found.verdicts().stream())
                        .filter(verdict -> same(verdict.reading(), reading))
                        .findFirst());
    }

    private static boolean same(Reading one, Reading other) {
        return one.check().equals(other.check())
                && one.value().equals(other.value())
                && one.instrument().equals(other.instrument())
                && one.conditions().equals(other.conditions());
    }

    private Optional<Reading> read(String entry) {
        if (!draft().has(entry + "value")) {
            return Optional.empty();
        }
        try {
            return Optional.of(work.knowledge()
                    .reading(
                            draft().get(entry + "check"),
                            VisitText.measured(draft(), entry + "value"),
                            draft().get(entry + "instrument"),
                            Set.copyOf(VisitText.words(draft().get(entry + "conditions")))));
        } catch (Refusal notReadable) {
            return Optional.empty();
        }
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

    /** True while stopped work holds the screen: its sheet was not printed and no release is recorded. */
    public boolean held() {
        return judged.get().filter(Judged::danger).isPresent() && !dangers().equals(draft().get(PRINTED));
    }

    /** Records that the sheet of the dangers at hand was printed. */
    public void printed() {
        history.change(draft -> draft.with(PRINTED, dangers()));
    }

    private String dangers() {
        return judged.get().map(Judged::finding).stream()
                .filter(Finding.StopWork.class::isInstance)
                .flatMap(found -> ((Finding.StopWork) found).dangers().stream())
                .map(Finding.Danger::gate)
                .sorted()
                .collect(Collectors.joining(","));
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
