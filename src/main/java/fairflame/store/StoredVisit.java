package fairflame.store;

import fairflame.Refusal;
import java.time.LocalDate;

/**
 * A visit with the columns it is found by.
 *
 * @param id 1 to 80 characters
 * @param state a word of the use cases
 * @param text the visit file, JSON
 */
public record StoredVisit(String id, String state, String customer, LocalDate on, String text) {
    public StoredVisit {
        if (id.isBlank() || id.length() > 80) {
            throw Refusal.malformed("id of a visit", id, "1 to 80 characters");
        }
        if (state.isBlank()) {
            throw Refusal.missing("state of visit " + id, "a word");
        }
    }
}
