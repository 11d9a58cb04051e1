package fairflame.visit;

import fairflame.quantity.Pressure;
import fairflame.quote.LicensedPerson;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the scope of a repair depends on besides finding and readings.
 *
 * @param partYears age of the failed part
 * @param facts ids of facts of the shop's repair book that the technician states
 * @param sizes size or rating by role, read off the old part
 * @param raised delivery pressure that the gas supplier has agreed to
 * @param fitter the licensed gas fitter who is to do gas work, once known
 */
public record RepairTerms(
        Optional<Integer> partYears,
        Set<String> facts,
        Map<String, String> sizes,
        Optional<Pressure> raised,
        Optional<LicensedPerson> fitter) {
    /** Nothing stated. */
    public static final RepairTerms NONE =
            new RepairTerms(Optional.empty(), Set.of(), Map.of(), Optional.empty(), Optional.empty());

    public RepairTerms {
        facts = Set.copyOf(facts);
        sizes = Map.copyOf(sizes);
    }
}
