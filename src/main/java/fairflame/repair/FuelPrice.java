package fairflame.repair;

import fairflame.Refusal;
import java.math.BigDecimal;
import org.joda.money.Money;

/**
 * What fuel costs.
 *
 * @param unit by which it is sold, in words
 * @param btu heat in one unit
 * @param price of one unit
 */
public record FuelPrice(String unit, BigDecimal btu, Money price) {
    public FuelPrice {
        if (btu.signum() <= 0) {
            throw Refusal.outOfRange("heat in a " + unit, btu, "more than 0 Btu");
        }
        if (price.isNegative()) {
            throw Refusal.outOfRange("price of a " + unit, price.getAmount(), "zero or more");
        }
    }

    /** Natural gas by the therm of 100,000 Btu. */
    public static FuelPrice perTherm(Money price) {
        return new FuelPrice("therm", BigDecimal.valueOf(100_000), price);
    }

    /** Propane by the US gallon of 91,500 Btu. From memory, not checked. */
    public static FuelPrice perPropaneGallon(Money price) {
        return new FuelPrice("gallon of propane", BigDecimal.valueOf(91_500), price);
    }
}
