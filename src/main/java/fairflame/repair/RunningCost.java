package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import org.joda.money.Money;

/**
 * What it costs to put an amount of heat into the water.
 *
 * @param heat that has to reach the water
 * @param efficiency share of the fuel's heat that does
 */
public record RunningCost(Measure heat, Percent efficiency, FuelPrice fuel) {
    public RunningCost {
        if (heat.unit().dimension() != Dimension.ENERGY) {
            throw Refusal.notAllowed("unit of heat", heat.unit().symbol(), Unit.allowed(Dimension.ENERGY));
        }
        if (efficiency.value().signum() <= 0) {
            throw Refusal.outOfRange("efficiency", efficiency, "above 0 %");
        }
    }

    /** One warm-up. */
    public static RunningCost of(HeatUp warmUp, FuelPrice fuel) {
        return new RunningCost(warmUp.energy(), warmUp.efficiency(), fuel);
    }

    private BigDecimal exactUnits() {
        return BigDecimal.valueOf(heat.in(Unit.BTU))
                .divide(efficiency.factor(), MathContext.DECIMAL64)
                .divide(fuel.btu(), MathContext.DECIMAL64);
    }

    /** Fuel used, in the unit by which it is sold, to two decimals. */
    public BigDecimal units() {
        return exactUnits().setScale(2, RoundingMode.HALF_UP);
    }

    /** What that fuel costs. */
    public Money cost() {
        return Rounding.NEAREST.times(fuel.price(), exactUnits());
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        return List.of(
                "It takes " + units() + " " + fuel.unit() + " of fuel, " + Printed.amount(cost()) + ".",
                "Assumed: efficiency " + efficiency + ", "
                        + Printed.amount(fuel.price()) + " a " + fuel.unit()
                        + ", losses on the way left out.");
    }
}
