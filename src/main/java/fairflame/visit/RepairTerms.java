package fairflame.visit;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the scope of a repair depends on besides finding and readings.
 *
 * @param partYears age of the failed part
 * @param facts ids of facts of the shop's repair book that the technician states
 * @param sizes size or rating by role, read off the old part
 */
public record RepairTerms(Optional<Integer> partYears, Set<String> facts, Map<String, String> sizes) {
    /** Nothing stated. */
    public static final RepairTerms NONE = new RepairTerms(Optional.empty(), Set.of(), Map.of());

    public RepairTerms {
        facts = Set.copyOf(facts);
        sizes = Map.copyOf(sizes);
    }
}
