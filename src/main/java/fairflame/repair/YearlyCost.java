package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import java.math.BigDecimal;
import java.math.MathContext;
import org.joda.money.Money;

/**
 * A sum spent once, as an equal cost in each year that it lasts: the capital recovery factor i / (1 - (1 + i)^-n).
 *
 * @param spent the sum
 * @param years how long it lasts, 1 to 100
 * @param interest a year, 0 to 30 %
 */
public record YearlyCost(Money spent, int years, Percent interest) {
    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal HIGHEST_INTEREST = BigDecimal.valueOf(30);

    public YearlyCost {
        if (spent.isNegative()) {
            throw Refusal.outOfRange("sum to be spread over years", spent.getAmount(), "zero or more");
        }
        if (years < 1 || years > 100) {
            throw Refusal.outOfRange("years", years, "1 to 100");
        }
        if (interest.value().signum() < 0 || interest.value().compareTo(HIGHEST_INTEREST) > 0) {
            throw Refusal.outOfRange("interest", interest, "0 to 30 %");
        }
    }

    /** Share of the sum that falls on a year. */
    public BigDecimal factor() {
        var rate = interest.factor();
        if (rate.signum() == 0) {
            return BigDecimal.ONE.divide(BigDecimal.valueOf(years), DIGITS);
        }
        var growth = BigDecimal.ONE.add(rate).pow(years, DIGITS);
        return rate.multiply(growth, DIGITS).divide(growth.subtract(BigDecimal.ONE), DIGITS);
    }

    /** Cost in a year, in whole cents. */
    public Money perYear() {
        return Rounding.NEAREST.times(spent, factor());
    }
}
