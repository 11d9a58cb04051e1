package fairflame.visit;

import fairflame.money.Percent;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What the customer told about the pool and its costs, so that the quote can show the arithmetic of the decision. What was
 * not told is not shown.
 */
public record DecisionTerms(Optional<WarmUp> warmUp, Optional<NewHeater> newHeater) {
    /** Nothing told. */
    public static final DecisionTerms NONE = new DecisionTerms(Optional.empty(), Optional.empty());

    /**
     * A usual warm-up.
     *
     * @param losses heat that the water gives off meanwhile
     * @param fuelPrice of a therm of natural gas or a gallon of propane
     * @param aMonth warm-ups a month, 0 to 100
     * @param months of use to look ahead, 0 to 120
     */
    public record WarmUp(Measure water, Measure rise, HeatRate losses, Money fuelPrice, int aMonth, int months) {}

    /**
     * A new heater instead of the repair.
     *
     * @param price installed
     * @param years its expected life
     * @param repairYears how long the repair is expected to last
     * @param yearlyGas what the gas costs in a year now
     * @param furtherRepairs expected for the old heater in a year
     */
    public record NewHeater(
            Money price,
            int years,
            Percent efficiency,
            int repairYears,
            Percent interest,
            Money yearlyGas,
            Money furtherRepairs) {}
}
