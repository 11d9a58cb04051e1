package fairflame.repair;

import fairflame.Refusal;
import fairflame.catalog.RepairBook;
import fairflame.catalog.Task;
import fairflame.diagnosis.Candidate;
import java.util.List;

/** Refuses a scope in which a task stands without what it needs. */
final class TaskRequirements {
    private final RepairBook book;
    private final List<Candidate> causes;

    TaskRequirements(RepairBook book, List<Candidate> causes) {
        this.book = book;
        this.causes = causes;
    }

    void check(List<PlannedTask> tasks, KnownFacts facts) {
        for (var planned : tasks) {
            checkFacts(planned.task(), facts.with(planned.line()));
            checkCompanions(planned.task(), tasks);
            checkCauses(planned.task());
        }
    }

    private void checkFacts(Task task, KnownFacts facts) {
        for (var fact : task.rules().requires()) {
            if (!facts.has(fact)) {
                throw fact.equals("pipe-sized")
                        ? Refusal.missing(
                                "sizing record for task " + task.id(), "a sized gas line: no pipe is sold by guess")
                        : Refusal.notAllowed("task", named(task), "only when " + book.wordsOf(fact));
            }
        }
    }

    private static void checkCompanions(Task task, List<PlannedTask> tasks) {
        var companions = task.rules().companions();
        if (!companions.isEmpty()
                && tasks.stream()
                        .noneMatch(other -> companions.contains(other.task().id()))) {
            throw Refusal.notAllowed(
                    "task without the repair of its cause",
                    named(task),
                    "together with one of "
                            + String.join(", ", companions.stream().sorted().toList()));
        }
    }

    private void checkCauses(Task task) {
        causes.stream()
                .filter(cause -> task.rules().notForCauses().contains(cause.cause()))
                .findFirst()
                .ifPresent(cause -> {
                    throw Refusal.notAllowed(
                            "task", named(task), "not while this stands: " + cause.cause() + " " + cause.title());
                });
    }

    private static String named(Task task) {
        return task.id() + " " + task.title();
    }
}
