package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When and how often a row or column of a template is written.
 *
 * @param each group that it is repeated for
 * @param only conditions without which it is left out
 * @param shown conditions without which it is hidden
 */
record Rule(Optional<String> each, List<String> only, List<String> shown) {
    static final Rule ONCE = new Rule(Optional.empty(), List.of(), List.of());

    Rule with(CellText.Instruction instruction, Vocabulary names) {
        if (instruction.kind() == CellText.Instruction.Kind.EACH) {
            var group = instruction.words().get(0);
            names.checkGroup(group);
            if (instruction.words().size() > 1
                    || each.filter(other -> !other.equals(group)).isPresent()) {
                throw Refusal.notAllowed("second repetition", String.join(", ", instruction.words()), "one at a time");
            }
            return new Rule(Optional.of(group), only, shown);
        }
        instruction.words().forEach(names::check);
        return instruction.kind() == CellText.Instruction.Kind.ONLY
                ? new Rule(each, joined(only, instruction.words()), shown)
                : new Rule(each, only, joined(shown, instruction.words()));
    }

    private static List<String> joined(List<String> some, List<String> more) {
        var all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    int count(Facts facts) {
        return facts.holds().containsAll(only) ? each.map(facts::size).orElse(1) : 0;
    }

    boolean hidden(Facts facts) {
        return !facts.holds().containsAll(shown);
    }
}
