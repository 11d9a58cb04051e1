package fairflame.visit;

import fairflame.money.Percent;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/**
 * What a price depends on besides the repair itself.
 *
 * @param zone key of the trip charge
 * @param conditions keys of the shop's time conditions, such as {@code tight-space}
 * @param discountPercent document discount
 * @param discountAmount document discount in money; at most one of the two is given
 * @param discountReason printed beside the discount
 * @param diagnosisPaid diagnostic fee already paid
 * @param diagnosisPaidOn day of that payment
 * @param taxRate rate to use when the place is not in the shop's files; the person quoting vouches for it
 */
public record PriceTerms(
        String zone,
        Set<String> conditions,
        Optional<Percent> discountPercent,
        Optional<Money> discountAmount,
        String discountReason,
        Optional<Money> diagnosisPaid,
        Optional<LocalDate> diagnosisPaidOn,
        Optional<Percent> taxRate) {
    public PriceTerms {
        conditions = Set.copyOf(conditions);
    }
}
