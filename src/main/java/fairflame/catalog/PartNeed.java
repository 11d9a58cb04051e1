package fairflame.catalog;

import java.math.BigDecimal;
import java.util.Set;

/**
 * What a task uses up: a role, not a part number, so that a shop can change its supplier.
 *
 * @param role of the part, or {@link #DEVICE}, {@link #PIPE} or {@link #FITTING}
 * @param size trade size; empty when the role has none; or {@link #PLATE}, {@link #PIPE} or {@link #INLET}
 * @param quantity of the part's unit
 */
public record PartNeed(String role, String size, BigDecimal quantity, Per per) {
    /** In place of a role: the device that the task is done on, one after the other. */
    public static final String DEVICE = "DEVICE";
    /** In place of a role: pipe of the sized material. In place of a size: the size of that line. */
    public static final String PIPE = "PIPE";
    /** In place of a role: every fitting of the sized line. */
    public static final String FITTING = "FITTING";
    /** In place of a size: what the old part or the plate says. */
    public static final String PLATE = "PLATE";
    /** In place of a size: the size of the heater's gas connection. */
    public static final String INLET = "INLET";

    /** The words that stand in place of a role. */
    static final Set<String> OPEN_ROLES = Set.of(DEVICE, PIPE, FITTING);
    /** The words that stand in place of a size. */
    static final Set<String> OPEN_SIZES = Set.of(PLATE, PIPE, INLET);
}
