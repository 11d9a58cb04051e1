package fairflame.catalog;

import fairflame.Refusal;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Whether everything that the repair book refers to is there. */
final class BookChecks {
    private final Shop shop;
    private final Problems problems;

    private BookChecks(Shop shop, Problems problems) {
        this.shop = shop;
        this.problems = problems;
    }

    static void check(Shop shop, Problems problems) {
        var checks = new BookChecks(shop, problems);
        var book = shop.book();
        book.joints().forEach(checks::check);
        book.pairs().forEach(checks::check);
        book.remedies().forEach(remedy -> remedy.ways().forEach(way -> checks.check(remedy, way)));
    }

    /** Every fact that a condition may name. */
    static Set<String> factIds(RepairBook book) {
        var ids = new TreeSet<>(RepairBook.WORKED_OUT.keySet());
        book.facts().forEach(fact -> ids.add(fact.id()));
        return ids;
    }

    private void check(Remedy remedy, Way way) {
        var where = ScopesFile.NAME + " " + remedy.cause() + ", ways " + way.id();
        conditions(where + ", when", way.when());
        for (var step : way.tasks()) {
            var place = where + ", tasks " + step.task();
            task(place, step.task());
            conditions(place + ", when", step.when());
            var paired = step.devices() == WayTask.Devices.PAIR || step.devices() == WayTask.Devices.WORST;
            if (paired && shop.book().pairOf(step.task()).isEmpty()) {
                problems.add(Refusal.unknown("pair of task", step.task(), "a task of a pair in pairs.yaml")
                        .at(place));
            }
        }
    }

    private void task(String where, String id) {
        if (shop.tasks().stream().noneMatch(task -> task.id().equals(id))) {
            problems.add(Refusal.unknown("task", id, "an id in tasks.yaml").at(where));
        }
    }

    private void conditions(String where, List<String> conditions) {
        var known = factIds(shop.book());
        for (var condition : conditions) {
            var fact = condition.replaceFirst("^not ", "");
            if (!known.contains(fact) && !fact.matches("(device|cause|material):[A-Za-z0-9-]+")) {
                problems.add(Refusal.unknown(
                                "fact",
                                fact,
                                String.join(", ", known) + ", device:ID, cause:ID, material:ID; not in front of each")
                        .at(where));
            }
        }
    }

    private void check(PairRule pair) {
        var where = PairsFile.NAME + " " + pair.id();
        task(where + ", task", pair.task());
        var facts = pair.facts();
        conditions(where + ", facts", List.of(facts.sameWater(), facts.sameBatch(), facts.waterStopped()));
        for (var member : pair.members()) {
            if (!shop.serves(member.device())) {
                problems.add(Refusal.unknown("role", member.device(), "a role in parts.csv")
                        .at(where));
            }
        }
    }

    private void check(JointKind joint) {
        for (var sealant : joint.use()) {
            if (!sealant.equals(TaskRules.DRY) && !shop.serves(sealant)) {
                problems.add(Refusal.unknown("sealant", sealant, "a role in parts.csv, or none")
                        .at(TablesFile.JOINTS + " " + joint.id() + ", use"));
            }
        }
    }
}
