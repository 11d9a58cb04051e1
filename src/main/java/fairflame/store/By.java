package fairflame.store;

import fairflame.Refusal;
import java.time.Instant;

/**
 * Who changes something, and when: stands in the journal beside every change of a transaction.
 *
 * @param who name of the person or of the command; not blank
 */
public record By(String who, Instant at) {
    public By {
        if (who.isBlank()) {
            throw Refusal.missing("name of who makes the change", "a name");
        }
    }
}
