package fairflame.catalog;

import java.math.BigDecimal;
import java.util.Map;
import org.joda.money.Money;

/**
 * What the shop charges for time.
 *
 * @param hourly by trade; {@link Trade#TECHNICIAN} must be there
 * @param minimumHours least labour billed a visit
 * @param trip charge a visit, by zone
 * @param diagnosticFee charge for a diagnosis without repair
 * @param creditDays days in which the diagnostic fee is credited against an accepted repair
 * @param roundUpTo step to which hours are rounded up once at the end, such as 0.05
 * @param ownFactors condition to factor on own hours, such as {@code tight-space} to 1.15
 * @param ownHours condition to hours added once, such as {@code corroded-fasteners} to 0.25
 */
public record Rates(
        Map<Trade, Money> hourly,
        BigDecimal minimumHours,
        Map<String, Money> trip,
        Money diagnosticFee,
        int creditDays,
        BigDecimal roundUpTo,
        Map<String, BigDecimal> ownFactors,
        Map<String, BigDecimal> ownHours,
        String source) {
    public Rates {
        hourly = Map.copyOf(hourly);
        trip = Map.copyOf(trip);
        ownFactors = Map.copyOf(ownFactors);
        ownHours = Map.copyOf(ownHours);
    }
}
