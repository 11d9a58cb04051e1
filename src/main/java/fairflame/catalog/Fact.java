package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.Optional;
import java.util.Set;

/**
 * Something that a remedy can depend on. It holds when the visit states it, when a reading says one of the words, or
 * when the heater is old enough.
 *
 * @param words what it says, in words
 * @param check id of the check whose reading decides it; empty for none
 * @param readings words of that reading under which it holds
 * @param heaterYears age of the heater from which on it holds
 */
public record Fact(
        String id,
        @Spoken String words,
        String check,
        Set<String> readings,
        Optional<Integer> heaterYears,
        String source) {
    public Fact {
        readings = Set.copyOf(readings);
    }
}
