package fairflame.catalog;

import java.math.BigDecimal;

/**
 * A part of a task's own time: 0.12 h for each foot.
 *
 * @param hours decimal hours, zero or more
 */
public record StandardTime(BigDecimal hours, Per per) {}
