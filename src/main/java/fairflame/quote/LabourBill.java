package fairflame.quote;

import fairflame.catalog.Trade;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.joda.money.Money;

/**
 * The hours of one visit, by hourly rate.
 *
 * @param hours as billed: own time and shared access, rounded up once
 * @param shares by rising rate; their hours add up to {@code hours}
 */
public record LabourBill(BigDecimal hours, List<Share> shares) {
    public LabourBill {
        shares = List.copyOf(shares);
    }

    /**
     * The hours charged at one rate.
     *
     * @param trades who works them
     * @param basis each standard time, access step, condition and rounding in them
     */
    public record Share(Money rate, Set<Trade> trades, BigDecimal hours, List<Basis> basis) {
        public Share {
            trades = Set.copyOf(trades);
            basis = List.copyOf(basis);
        }
    }
}
