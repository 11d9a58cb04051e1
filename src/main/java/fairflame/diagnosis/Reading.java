package fairflame.diagnosis;

import java.util.Set;

/**
 * One answer to one check.
 *
 * @param check id of the check in the knowledge, such as {@code gas-static}
 * @param value what was read
 * @param instrument id of the instrument kind, such as {@code u-tube}, {@code slow-digital}; empty when none
 * @param conditions words that say when: {@code cold}, {@code warm}, {@code idle}, {@code firing}, {@code furnace-on},
 *     {@code heater-alone}, {@code minimum-hold}, {@code leads-lifted}
 * @param seen true when the person at the heater saw it, false when told by somebody else
 * @param note free words; empty for none
 */
public record Reading(String check, Value value, String instrument, Set<String> conditions, boolean seen, String note) {
    public Reading {
        conditions = Set.copyOf(conditions);
    }
}
