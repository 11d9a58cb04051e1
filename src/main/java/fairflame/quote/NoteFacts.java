package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.repair.Scope;
import fairflame.repair.ScopedTask;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What the printing of notes depends on, for one choice.
 *
 * @param asked ids of notes that the choice asks for itself
 * @param tests letters of the tests after the repair
 * @param access ids of the access steps taken
 * @param further whether the choice is sold beyond the repair that was asked for
 */
record NoteFacts(
        boolean repair,
        List<Task> scoped,
        Set<String> asked,
        Set<String> tests,
        Set<String> access,
        Duties duties,
        boolean further,
        Jurisdiction place) {

    static NoteFacts of(Scope scope, Set<String> access, Duties duties, boolean further, Jurisdiction place) {
        return new NoteFacts(
                true,
                scope.tasks().stream().map(ScopedTask::task).toList(),
                scope.extraNotes(),
                Set.copyOf(scope.tests()),
                access,
                duties,
                further,
                place);
    }

    static NoteFacts diagnosis(Jurisdiction place) {
        return new NoteFacts(false, List.of(), Set.of(), Set.of(), Set.of(), Duties.NONE, false, place);
    }

    Set<String> tasks() {
        return scoped.stream().map(Task::id).collect(Collectors.toSet());
    }

    Set<Trade> trades() {
        return scoped.stream().flatMap(task -> Crew.of(task, place).stream()).collect(Collectors.toSet());
    }

    Optional<String> askedBy(String note) {
        if (asked.contains(note)) {
            return Optional.of("asked for by this choice");
        }
        return scoped.stream()
                .filter(task -> task.notes().contains(note))
                .findFirst()
                .map(task -> "asked for by task " + task.id());
    }

    /** All ids that a task or the choice asks for. */
    Set<String> allAsked() {
        var all = new TreeSet<>(asked);
        scoped.forEach(task -> all.addAll(task.notes()));
        return all;
    }

    String gasWork() {
        return "gas work: "
                + scoped.stream()
                        .filter(task ->
                                task.regulatedGas() || Crew.of(task, place).contains(Trade.GAS_FITTER))
                        .map(Task::id)
                        .collect(Collectors.joining(", "));
    }

    boolean cancelRight() {
        return place.cancelDays() > 0 && (place.cancelAlways() || further || placeUnknown());
    }

    boolean placeUnknown() {
        return !place.unknown().isEmpty();
    }

    String placeName() {
        return place.name();
    }
}
