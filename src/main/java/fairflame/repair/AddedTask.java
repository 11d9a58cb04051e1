package fairflame.repair;

import java.math.BigDecimal;

/**
 * A task that the technician adds to every scope by hand, such as fetching the permit.
 *
 * @param task id of the task
 * @param pieces how many; 1 for a task that is not counted in pieces
 * @param reason why, one sentence
 */
public record AddedTask(String task, BigDecimal pieces, String reason) {}
