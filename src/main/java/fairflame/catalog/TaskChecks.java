package fairflame.catalog;

import fairflame.Refusal;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Whether everything that a task refers to is there, and whether each of its joints gets the right sealant. */
final class TaskChecks {
    private final Shop shop;
    private final Problems problems;

    private TaskChecks(Shop shop, Problems problems) {
        this.shop = shop;
        this.problems = problems;
    }

    static void check(Shop shop, Problems problems) {
        var checks = new TaskChecks(shop, problems);
        shop.tasks().forEach(checks::check);
    }

    private void check(Task task) {
        var ids = shop.tasks().stream().map(Task::id).toList();
        known(task, "access", "access step", task.access(), ids(shop.access(), AccessStep::id));
        known(task, "tests", "test", task.tests(), ids(shop.book().tests(), AfterTest::letter));
        known(
                task,
                "warranty",
                "warranty",
                Set.of(task.warranty()),
                ids(shop.book().warranties(), Warranty::key));
        known(task, "conflicts", "task", task.conflicts(), ids);
        known(
                task,
                "leaves",
                "part that it replaces",
                task.rules().leaves(),
                task.rules().replaces());
        known(task, "absorbs", "task", task.rules().absorbs(), ids);
        known(task, "companions", "task", task.rules().companions(), ids);
        known(task, "permit", "permit class", Set.of(task.permitClass()), permitClasses());
        known(task, "requires", "fact", task.rules().requires(), BookChecks.factIds(shop.book()));
        task.needs().forEach(need -> checkNeed(task, need));
        task.rules().joints().forEach((kind, sealant) -> checkJoint(task, kind, sealant));
        task.needs().forEach(need -> checkSealant(task, need.role()));
        task.trades().forEach(trade -> checkRate(task, trade));
    }

    private static <T> List<String> ids(List<T> entries, Function<T, String> id) {
        return entries.stream().map(id).toList();
    }

    private static List<String> permitClasses() {
        var classes = new TreeSet<>(CautiousPlace.PERMIT_CLASSES);
        classes.add("none");
        return List.copyOf(classes);
    }

    private void known(Task task, String field, String what, Set<String> used, Collection<String> known) {
        used.stream()
                .filter(name -> !known.contains(name))
                .sorted()
                .forEach(name -> add(task, field, Refusal.unknown(what, name, "one of " + String.join(", ", known))));
    }

    private void add(Task task, String field, Refusal refusal) {
        problems.add(refusal.at(TasksFile.place(task.id()) + ", " + field));
    }

    private void checkNeed(Task task, PartNeed need) {
        if (PartNeed.OPEN_ROLES.contains(need.role())) {
            return;
        }
        if (!shop.serves(need.role())) {
            add(task, "needs", Refusal.unknown("role", need.role(), "a role in parts.csv, DEVICE, PIPE, FITTING"));
        } else if (!PartNeed.OPEN_SIZES.contains(need.size())) {
            problems.attempt(() -> {
                try {
                    return shop.part(need.role(), need.size());
                } catch (Refusal refusal) {
                    throw refusal.at(TasksFile.place(task.id()) + ", needs");
                }
            });
        }
    }

    private void checkJoint(Task task, String kind, String sealant) {
        var joint = shop.book().joints().stream()
                .filter(known -> known.id().equals(kind))
                .findFirst();
        if (joint.isEmpty()) {
            add(task, "joints", Refusal.unknown("kind of joint", kind, "an id in joints.yaml"));
        } else if (!joint.get().use().contains(sealant)) {
            var right = joint.get().use().stream().sorted().collect(Collectors.joining(", "));
            add(task, "joints, " + kind, Refusal.notAllowed("sealant", sealant, right));
        } else if (!sealant.equals(TaskRules.DRY)
                && task.needs().stream().noneMatch(need -> need.role().equals(sealant))) {
            add(task, "needs", Refusal.missing("sealant " + sealant + " for " + kind, "a need with this role"));
        }
    }

    /** A sealant among the needs has to belong to a joint of the task. */
    private void checkSealant(Task task, String role) {
        var isSealant =
                shop.book().joints().stream().anyMatch(joint -> joint.use().contains(role));
        if (isSealant && !task.rules().joints().containsValue(role)) {
            add(task, "needs", Refusal.notAllowed("sealant", role, "only with a joint that it is used on, in joints"));
        }
    }

    private void checkRate(Task task, Trade trade) {
        var needed = trade == Trade.TEST_TAP ? Set.of(Trade.TECHNICIAN, Trade.GAS_FITTER) : Set.of(trade);
        needed.stream()
                .filter(paid -> !shop.rates().hourly().containsKey(paid))
                .forEach(paid ->
                        add(task, "who", Refusal.missing("hourly rate of " + paid.letter(), "a rate in rates.yaml")));
    }
}
