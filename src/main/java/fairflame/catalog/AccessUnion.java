package fairflame.catalog;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The access steps of a visit: every step once, however many tasks need it, with the steps that it pulls in. */
public final class AccessUnion {
    private AccessUnion() {}

    /**
     * The steps for these tasks in the order of the shop's list; none for tasks without access, such as office work.
     *
     * @param steps the shop's steps; the ids that tasks and steps name are among them, as the reading of the folder
     *     has made sure
     */
    public static Set<AccessStep> of(List<AccessStep> steps, Collection<Task> tasks) {
        var wanted = new TreeSet<String>();
        var open = new ArrayDeque<String>();
        tasks.forEach(task -> open.addAll(task.access()));
        while (!open.isEmpty()) {
            var id = open.remove();
            if (wanted.add(id)) {
                steps.stream().filter(step -> step.id().equals(id)).forEach(step -> open.addAll(step.needs()));
            }
        }
        var union = new LinkedHashSet<AccessStep>();
        steps.stream().filter(step -> wanted.contains(step.id())).forEach(union::add);
        return union;
    }
}
