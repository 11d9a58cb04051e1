package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A contradiction that is not resolved, or a doubt about a reading.
 *
 * @param id of its row
 * @param words one sentence
 * @param held causes that cannot settle meanwhile
 * @param next what to do about it, in this order
 * @param source key of the source
 */
record Objection(String id, String words, Held held, List<CheckRef> next, String source) {
    Objection {
        next = List.copyOf(next);
    }

    /** Contradictions that hold and are not resolved, in the order of the knowledge. */
    static List<Objection> contradictions(Knowledge knowledge, Facts facts) {
        var found = new ArrayList<Objection>();
        for (var row : knowledge.rulebook().contradictions()) {
            if (row.unless().stream().noneMatch(each -> each.holdsSomewhere(facts, Facts.Trust.SOUND))) {
                first(facts, row.when(), row.words())
                        .ifPresent(binding -> found.add(new Objection(
                                row.id(), row.words().in(binding), row.held(), row.next(), row.source())));
            }
        }
        return found;
    }

    private static Optional<Binding> first(Facts facts, List<Condition> when, Template words) {
        var refs = new TreeSet<CheckRef>(words.refs());
        when.forEach(condition -> refs.addAll(condition.refs()));
        return Binding.all(facts, refs, Facts.Trust.ANY).stream()
                .filter(binding -> when.stream().allMatch(condition -> condition.holds(binding)))
                .findFirst();
    }
}
