package fairflame.repair;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

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
        refuseSamePart(merged);
        return merged;
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

    private static void refuseSamePart(List<PlannedTask> tasks) {
        var renewedBy = new LinkedHashMap<String, String>();
        for (var planned : tasks) {
            for (var part : planned.task().rules().replaces()) {
                var earlier = renewedBy.putIfAbsent(part, planned.task().id());
                if (earlier != null) {
                    throw Refusal.notAllowed(
                            "second task that renews " + part,
                            planned.task().id(),
                            "one task for it; " + earlier + " renews it already");
                }
            }
        }
    }
}
