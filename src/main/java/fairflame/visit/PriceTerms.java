package fairflame.visit;

import fairflame.money.Percent;
import fairflame.quote.PricingInputs;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a price depends on besides the repair itself, as a visit tells it.
 *
 * @param inputs zone, conditions, discounts, diagnosis paid, further lines
 * @param taxRate rate to use when the place is not in the shop's files; the person quoting vouches for it
 * @param pricesUntil last day on which the prices hold, when that is before the shop's usual term
 */
public record PriceTerms(PricingInputs inputs, Optional<Percent> taxRate, Optional<LocalDate> pricesUntil) {}
