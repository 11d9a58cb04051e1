package fairflame.catalog;

import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.util.Set;

/**
 * Work that opens the way, done once a visit however many tasks need it.
 *
 * @param hours standard hours
 * @param needs ids of steps that it pulls in
 */
public record AccessStep(String id, @Spoken String title, BigDecimal hours, Set<String> needs, String source) {
    public AccessStep {
        needs = Set.copyOf(needs);
    }
}
