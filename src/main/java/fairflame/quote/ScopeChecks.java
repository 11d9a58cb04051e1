package fairflame.quote;

import fairflame.Refusal;
import fairflame.repair.RepairPlan;
import fairflame.repair.Scope;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a repair has to meet before it is priced. */
final class ScopeChecks {
    // Facts of the repair book that the quote checks once more, because a price on them could hide a danger.
    private static final String RELEASED = "released";
    private static final String CAUSE_NAMED = "cause-named";

    private ScopeChecks() {}

    /**
     * Refuses a plan that may not be priced.
     *
     * @param causes how many causes are settled
     */
    static void refuseUnfit(RepairPlan plan, int causes, QuoteRequest request) {
        var ids = new HashSet<String>();
        for (var scope : plan.scopes()) {
            if (!ids.add(scope.id())) {
                throw Refusal.notAllowed("scope", scope.id(), "each id once");
            }
            if (scope.tasks().isEmpty()) {
                throw Refusal.missing("task in scope " + scope.id(), "at least one task");
            }
            refuseWithoutCause(scope, causes, request);
        }
        var suggested = plan.scopes().stream().filter(Scope::suggested).count();
        if (suggested != 1) {
            throw Refusal.notAllowed("number of suggested scopes", suggested, "exactly one");
        }
    }

    /** Work that hides a danger when it stands alone is not priced without the repair of its cause. */
    private static void refuseWithoutCause(Scope scope, int causes, QuoteRequest request) {
        var tasks = scope.tasks().stream().map(scoped -> scoped.task().id()).collect(Collectors.toSet());
        var released = !request.releases().isEmpty();
        for (var scoped : scope.tasks()) {
            var task = scoped.task();
            var rules = task.rules();
            if (!rules.companions().isEmpty() && rules.companions().stream().noneMatch(tasks::contains)) {
                throw Refusal.notAllowed(
                        "task " + task.id(),
                        "without the repair of its cause in scope " + scope.id(),
                        "beside one of " + String.join(", ", new TreeSet<>(rules.companions())));
            }
            if (rules.requires().contains(RELEASED) && !released) {
                throw Refusal.notAllowed("task " + task.id(), "no release", "a licensed release that names the cause");
            }
            if (rules.requires().contains(CAUSE_NAMED) && !released && causes < 2) {
                throw Refusal.notAllowed(
                        "task " + task.id(), "cause not named", "a second settled cause or a licensed release");
            }
        }
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
