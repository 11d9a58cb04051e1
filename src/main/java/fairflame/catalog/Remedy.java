package fairflame.catalog;

import fairflame.wording.Spoken;
import java.util.List;

/**
 * What mends a cause.
 *
 * @param cause id of the cause in the knowledge
 * @param ways every way that may be offered; empty when there is nothing to repair
 * @param advice what to tell the customer when there is no way; empty otherwise
 */
public record Remedy(String cause, List<Way> ways, @Spoken String advice, String source) {
    public Remedy {
        ways = List.copyOf(ways);
    }
}
