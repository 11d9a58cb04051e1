package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;

/**
 * One run of pipe whose capacity is asked for.
 *
 * @param length equivalent length, above 0
 * @param inlet gauge pressure at its beginning
 * @param drop allowed loss of pressure, above 0 and below the inlet pressure
 */
public record Run(Gas gas, Pipe pipe, Length length, Pressure inlet, Pressure drop) {
    public Run {
        if (length.feet() <= 0) {
            throw Refusal.outOfRange("length of the run", Figures.feet(length), "above 0 ft");
        }
        if (drop.inchesWater() <= 0 || drop.compareTo(inlet) >= 0) {
            throw Refusal.outOfRange(
                    "allowed drop",
                    Figures.pressure(drop),
                    "above 0 and below the inlet pressure of " + Figures.pressure(inlet));
        }
    }

    FlowEquation equation() {
        return FlowEquation.at(inlet);
    }

    /** The allowed drop in the potential of the equation. */
    double allowedLoss() {
        var form = equation();
        return form.potential(inlet.inchesWater()) - form.potential(inlet.inchesWater() - drop.inchesWater());
    }

    Run longBy(Length other) {
        return new Run(gas, pipe, other, inlet, drop);
    }
}
