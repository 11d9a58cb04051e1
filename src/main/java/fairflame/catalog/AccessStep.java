package fairflame.catalog;

import java.math.BigDecimal;
import java.util.Set;

/**
 * Work that opens the way, done once a visit however many tasks need it.
 *
 * @param hours standard hours
 * @param needs ids of steps that it pulls in
 * @param always true for a step that belongs to every visit on which any access is needed: the restart
 */
public record AccessStep(String id, String title, BigDecimal hours, Set<String> needs, boolean always, String source) {
    public AccessStep {
        needs = Set.copyOf(needs);
    }

    /** A step that is done only where a task or another step asks for it. */
    public AccessStep(String id, String title, BigDecimal hours, Set<String> needs, String source) {
        this(id, title, hours, needs, false, source);
    }
}
