package fairflame.repair;

import fairflame.catalog.Per;
import fairflame.catalog.Task;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * A task that is to be done, counted.
 *
 * @param counts how many pieces, feet, fittings; {@link Per#JOB} is 1
 * @param cause id of the cause that it mends
 * @param reason why it is in the scope, one sentence
 */
public record ScopedTask(Task task, Map<Per, BigDecimal> counts, List<ScopedPart> parts, String cause, String reason) {
    public ScopedTask {
        counts = Map.copyOf(counts);
        parts = List.copyOf(parts);
    }
}
