package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.AccessStep;
import fairflame.catalog.AccessUnion;
import fairflame.catalog.Task;
import fairflame.repair.ScopedTask;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Which access steps a visit needs, each once, and which tasks share it. */
final class AccessOnce {
    private final List<AccessStep> steps;
    private final Set<String> known;

    AccessOnce(List<AccessStep> steps) {
        this.steps = steps;
        this.known = steps.stream().map(AccessStep::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** All steps the tasks need, implied ones included, in the order of the catalog. */
    List<Shared> union(List<ScopedTask> tasks) {
        var users = new HashMap<AccessStep, Set<ScopedTask>>();
        for (var task : tasks) {
            refuseUnknown(task.task());
            AccessUnion.of(steps, List.of(task.task()))
                    .forEach(step ->
                            users.computeIfAbsent(step, any -> new HashSet<>()).add(task));
        }
        return AccessUnion.of(steps, tasks.stream().map(ScopedTask::task).toList()).stream()
                .map(step -> new Shared(step, users.getOrDefault(step, Set.of())))
                .toList();
    }

    private void refuseUnknown(Task task) {
        for (var id : task.access()) {
            if (!known.contains(id)) {
                throw Refusal.unknown("access step", id, String.join(", ", known));
            }
        }
    }

    /** A step and the tasks that need it. */
    record Shared(AccessStep step, Set<ScopedTask> users) {
        List<String> taskIds() {
            return users.stream()
                    .map(user -> user.task().id())
                    .distinct()
                    .sorted()
                    .toList();
        }
    }
}
