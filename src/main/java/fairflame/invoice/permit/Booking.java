package fairflame.invoice.permit;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The day on which signed work begins.
 *
 * @param crew who does it
 */
public record Booking(String quote, int revision, LocalDate day, String crew) {
    /**
     * Books the work. No work begins while the customer may still cancel, unless the customer's own waiver is on record.
     *
     * @param waiver of this signed revision
     */
    public static Booking of(SignedRevision signed, LocalDate day, String crew, Optional<Waiver> waiver) {
        if (crew.isBlank()) {
            throw Refusal.missing("who does the work", "a name");
        }
        if (day.isBefore(signed.signature().at().toLocalDate())) {
            throw Refusal.outOfRange(
                    "day of the work", day, signed.signature().at().toLocalDate() + " or later, when it was signed");
        }
        CancelGate.refuse("day of the work", signed, day, waiver);
        var quote = signed.quote();
        return new Booking(quote.number(), quote.revision(), day, crew);
    }
}
