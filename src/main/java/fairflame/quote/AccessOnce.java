package fairflame.quote;

import fairflame.Refusal;
import fairflame.catalog.AccessStep;
import fairflame.repair.ScopedTask;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Which access steps a visit needs, each once, and which tasks share it. */
final class AccessOnce {
    private final List<AccessStep> steps;
    private final Map<String, AccessStep> byId = new HashMap<>();

    AccessOnce(List<AccessStep> steps) {
        this.steps = steps;
        steps.forEach(step -> byId.put(step.id(), step));
    }

    /** All steps the tasks need, implied ones included, in the order of the catalog. */
    List<Shared> union(List<ScopedTask> tasks) {
        var users = new HashMap<String, Set<ScopedTask>>();
        for (var task : tasks) {
            for (var id : closure(task.task().access())) {
                users.computeIfAbsent(id, any -> new HashSet<>()).add(task);
            }
        }
        return steps.stream()
                .filter(step -> users.containsKey(step.id()))
                .map(step -> new Shared(step, users.getOrDefault(step.id(), Set.of())))
                .toList();
    }

    private Set<String> closure(Set<String> ids) {
        var found = new TreeSet<String>();
        ids.forEach(id -> pull(id, found));
        return found;
    }

    private void pull(String id, Set<String> found) {
        var step = byId.get(id);
        if (step == null) {
            throw Refusal.unknown("access step", id, String.join(", ", new TreeSet<>(byId.keySet())));
        }
        if (found.add(id)) {
            step.needs().forEach(need -> pull(need, found));
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
