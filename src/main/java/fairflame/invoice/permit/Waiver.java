package fairflame.invoice.permit;

import fairflame.Refusal;
import java.time.LocalDate;

/**
 * The buyer's own dated statement that an emergency cannot wait for the right to cancel to end (16 CFR 429.0(a)(3)).
 *
 * @param statement in the buyer's own words
 */
public record Waiver(String quote, int revision, LocalDate on, String statement) {
    public Waiver {
        if (statement.strip().length() < 20) {
            throw Refusal.malformed("statement of the buyer", statement, "the buyer's own words, 20 letters or more");
        }
    }
}
