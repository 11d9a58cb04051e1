package fairflame.repair;

import fairflame.Refusal;
import fairflame.money.Percent;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a heater costs that gets less gas than its plate says. It burns less in an hour and about the same for a degree:
 * what is lost is time, the heat that the water gives off meanwhile, and, over the years, soot and condensation (trade
 * magazine S-TRADE3). So no saving of gas is claimed.
 *
 * @param asPlate the warm-up at the plate's input
 * @param share of the plate's input that is measured, above 0 to 100 %
 * @param lossRate what the water gives off in an hour while it waits
 */
public record Underfiring(HeatUp asPlate, Percent share, HeatRate lossRate, FuelPrice fuel) {
    public Underfiring {
        var part = share.value().doubleValue();
        if (!(part > 0 && part <= 100)) {
            throw Refusal.outOfRange("share of the plate's input", share, "above 0 to 100 %");
        }
    }

    /** The same warm-up at the measured input. */
    public HeatUp asMeasured() {
        return asPlate.at(HeatRate.ofBtuPerHour(
                asPlate.input().btuPerHour() * share.factor().doubleValue()));
    }

    /** How much longer it takes; empty when the water never gets there. */
    public Optional<Measure> longer() {
        return asMeasured()
                .time()
                .flatMap(slow ->
                        asPlate.time().map(fast -> Measure.of(slow.in(Unit.HOUR) - fast.in(Unit.HOUR), Unit.HOUR)));
    }

    /** Heat given off while waiting longer. */
    public Optional<Measure> extraLoss() {
        return longer().map(hours -> Measure.of(hours.in(Unit.HOUR) * lossRate.btuPerHour(), Unit.BTU));
    }

    /** What the fuel for that heat costs, for one warm-up. */
    public Optional<Money> extraCost() {
        return extraLoss().map(loss -> new RunningCost(loss, asPlate.efficiency(), fuel).cost());
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        var wait = longer().map(hours -> "At " + share + " of its input the heater takes "
                        + String.format(Locale.ROOT, "%.1f", hours.in(Unit.HOUR)) + " hours longer for a warm-up.")
                .orElse("At " + share + " of its input the heater never gets there.");
        var cost = extraCost()
                .map(
                        extra -> "Heat lost while waiting costs about "
                                + Printed.amount(extra)
                                + " a warm-up. Gas saved rarely pays for a new line; time, drop-outs and the life of the heater do.")
                .orElse("");
        return List.of(
                        wait,
                        cost,
                        "Assumed: " + asPlate.water() + " by " + asPlate.rise() + ", losses "
                                + String.format(Locale.ROOT, "%,.0f Btu/h", lossRate.btuPerHour()) + ", "
                                + Printed.amount(fuel.price()) + " a " + fuel.unit() + ".")
                .stream()
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }
}
