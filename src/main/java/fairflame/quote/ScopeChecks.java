package fairflame.quote;

import fairflame.Refusal;
import fairflame.repair.RepairPlan;
import fairflame.repair.Scope;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** What a repair has to meet before it is priced. */
final class ScopeChecks {
    /**
     * Repairs that only hide a cause when they stand alone, and the tasks that do not count as its repair: a thermal
     * fuse after a rollout, soot cleaned from the exchanger. Common practice, no source.
     */
    private static final Map<String, Set<String>> NEVER_ALONE =
            Map.of("R16", Set.of("R16", "R00", "R33"), "R25", Set.of("R25", "R16", "R00", "R33"));

    private ScopeChecks() {}

    static void refuseUnfit(RepairPlan plan, QuoteRequest request) {
        if (plan.scopes().isEmpty()) {
            throw Refusal.missing("way to mend the finding", "at least one scope of repair");
        }
        var ids = new HashSet<String>();
        for (var scope : plan.scopes()) {
            if (!ids.add(scope.id())) {
                throw Refusal.notAllowed("scope", scope.id(), "each id once");
            }
            if (scope.tasks().isEmpty()) {
                throw Refusal.missing("task in scope " + scope.id(), "at least one task");
            }
            refuseWithoutCause(scope, request);
        }
        var suggested = plan.scopes().stream().filter(Scope::suggested).count();
        if (suggested != 1) {
            throw Refusal.notAllowed("number of suggested scopes", suggested, "exactly one");
        }
    }

    private static void refuseWithoutCause(Scope scope, QuoteRequest request) {
        var tasks = scope.tasks().stream().map(scoped -> scoped.task().id()).collect(Collectors.toSet());
        var released =
                request.releases().stream().anyMatch(release -> !release.cause().isBlank());
        NEVER_ALONE.forEach((task, notEnough) -> {
            var mended = tasks.stream().anyMatch(other -> !notEnough.contains(other));
            // Soot may be the cause itself, once a licensed person has named it so.
            var namedBySomeone = task.equals("R25") && released;
            if (tasks.contains(task) && !mended && !namedBySomeone) {
                throw Refusal.notAllowed(
                        "task " + task, "alone in scope " + scope.id(), task + " beside the repair of its cause");
            }
        });
    }

    /** Refuses what was asked for and touched no line of any choice. */
    static void refuseUnused(List<Choice> choices, PricingInputs inputs) {
        var ids = choices.stream().map(Choice::id).collect(Collectors.toSet());
        var lines = choices.stream().flatMap(choice -> choice.lines().stream()).toList();
        for (var discount : inputs.lineDiscounts()) {
            if (lines.stream()
                    .noneMatch(line -> line.item().equals(discount.item())
                            || line.kind().word().equals(discount.item()))) {
                throw Refusal.unknown(
                        "line to discount",
                        discount.item(),
                        lines.stream()
                                .map(line -> line.item().isEmpty() ? line.kind().word() : line.item())
                                .distinct()
                                .sorted()
                                .collect(Collectors.joining(", ")));
            }
        }
        for (var extra : inputs.extras()) {
            if (!extra.choice().isEmpty() && !ids.contains(extra.choice())) {
                throw Refusal.unknown("choice of line '" + extra.description() + "'", extra.choice(), words(ids));
            }
        }
        for (var further : inputs.further()) {
            if (!ids.contains(further)) {
                throw Refusal.unknown("choice sold further", further, words(ids));
            }
        }
    }

    private static String words(Set<String> ids) {
        return ids.stream().sorted().collect(Collectors.joining(", "));
    }
}
