package fairflame.catalog;

import java.math.BigDecimal;

/**
 * What a task uses up: a role, not a part number, so that a shop can change its supplier.
 *
 * @param size trade size; empty when the role has none or when the sizing result gives it
 * @param quantity of the part's unit
 */
public record PartNeed(String role, String size, BigDecimal quantity, Per per) {}
