package fairflame.repair;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.TreeSet;

/**
 * Puts the tasks of several causes beside each other: the same task is done once, a task that is part of another falls
 * away, and what cannot stand side by side is refused.
 */
final class Merging {
    private Merging() {}

    /**
     * The tasks that remain.
     *
     * @param reasons receives a sentence for each task that falls away
     */
    static List<PlannedTask> merge(List<PlannedTask> planned, List<String> reasons) {
        var byId = new LinkedHashMap<String, PlannedTask>();
        planned.forEach(task -> byId.merge(task.task().id(), task, PlannedTask::merge));
        var merged = new ArrayList<>(byId.values());
        for (var big : byId.values()) {
            for (var small : byId.values()) {
                var absorbed =
                        big.task().rules().absorbs().contains(small.task().id()) && big.meets(small);
                if (absorbed && merged.contains(big) && merged.remove(small)) {
                    reasons.add(small.task().id() + " (" + small.task().title() + ") is part of "
                            + big.task().id() + " and not counted again.");
                }
            }
        }
        refuseConflicts(merged);
        return partsOnce(merged, reasons);
    }

    private static void refuseConflicts(List<PlannedTask> tasks) {
        for (var one : tasks) {
            for (var other : tasks) {
                if (one.task().conflicts().contains(other.task().id()) && one.meets(other)) {
                    throw Refusal.notAllowed(
                            "task beside " + one.task().id(),
                            other.task().id(),
                            "one of the two: " + one.task().title() + ", or "
                                    + other.task().title());
                }
            }
        }
    }

    /** Each part is renewed by one task: a second one leaves it to the first where its rules say so, else is refused. */
    private static List<PlannedTask> partsOnce(List<PlannedTask> tasks, List<String> reasons) {
        var once = new ArrayList<>(tasks);
        for (int i = 0; i < once.size(); i++) {
            for (int j = i + 1; j < once.size(); j++) {
                for (var part : new TreeSet<>(once.get(i).task().rules().replaces())) {
                    if (once.get(j).task().rules().replaces().contains(part)) {
                        leave(once, i, j, part, reasons);
                    }
                }
            }
        }
        return once;
    }

    private static void leave(List<PlannedTask> tasks, int first, int second, String part, List<String> reasons) {
        boolean byFirst = tasks.get(first).leaves(part);
        if (byFirst == tasks.get(second).leaves(part)) {
            throw Refusal.notAllowed(
                    "second task that renews " + part,
                    tasks.get(second).task().id(),
                    "one task for it; " + tasks.get(first).task().id() + " renews it already");
        }
        int leaving = byFirst ? first : second;
        tasks.set(leaving, tasks.get(leaving).without(part));
        var renews = tasks.get(byFirst ? second : first).task();
        reasons.add(part + " is renewed once, by " + renews.id() + " (" + renews.title() + "); "
                + tasks.get(leaving).task().id() + " leaves it to that.");
    }
}
