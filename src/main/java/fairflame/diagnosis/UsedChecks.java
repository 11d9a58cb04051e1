package fairflame.diagnosis;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Which checks some rule, gate, contradiction, doubt, verdict or computation asks for, and under which tags. */
final class UsedChecks {
    private final Set<String> ids = new TreeSet<>(Set.of(NextChecks.SECOND_LOOK, Facts.DATA_PLATE.check()));
    private final Map<String, Set<String>> tags = new TreeMap<>();

    UsedChecks(Knowledge knowledge) {
        var rules = knowledge.rulebook();
        rules.gates().values().forEach(gate -> gate.triggers().forEach(trigger -> conditions(trigger.when())));
        rules.causes().values().forEach(cause -> cause.rules().forEach(rule -> conditions(rule.conditions())));
        rules.contradictions().forEach(row -> {
            conditions(row.when());
            conditions(row.unless());
            refs(row.next());
        });
        rules.doubts().forEach(row -> {
            conditions(row.when());
            refs(row.next());
            refs(List.of(row.reading()));
        });
        rules.verdicts().values().forEach(row -> {
            row.marks().forEach(mark -> conditions(mark.when()));
            row.low().ifPresent(term -> refs(term.mentions()));
            row.high().ifPresent(term -> refs(term.mentions()));
        });
        for (var computed : Computed.values()) {
            ids.addAll(computed.needs());
            ids.addAll(computed.also());
        }
        knowledge.checks().forEach(check -> ids.addAll(check.after()));
    }

    Set<String> ids() {
        return Set.copyOf(ids);
    }

    /** The tags of a check that make a difference to some rule. */
    Set<String> tags(String check) {
        return Set.copyOf(tags.getOrDefault(check, Set.of()));
    }

    private void conditions(Collection<Condition> conditions) {
        conditions.forEach(condition -> refs(condition.mentions()));
    }

    private void refs(Collection<CheckRef> refs) {
        refs.forEach(ref -> {
            ids.add(ref.check());
            tags.computeIfAbsent(ref.check(), any -> new TreeSet<>()).addAll(ref.tags());
        });
    }
}
