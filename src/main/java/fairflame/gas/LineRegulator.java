package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;

/**
 * A regulator inside the piping. It holds its outlet pressure while its inlet has the minimum; droop is not computed.
 *
 * @param before id of the segment or appliance that it stands directly before
 * @param outlet set pressure
 * @param capacity what it passes at its pressures
 * @param minimumInlet the least inlet pressure at which it passes its capacity
 */
public record LineRegulator(String id, String before, Pressure outlet, GasFlow capacity, Pressure minimumInlet) {
    // A regulator may lose at most 3/4 psi where the tables for 2 psi are used: 2018 IFGC, note to Table 402.4(5)
    private static final Pressure GREATEST_LOSS = Pressure.ofPsi(0.75);

    public LineRegulator {
        if (outlet.inchesWater() <= 0) {
            throw Refusal.outOfRange("outlet pressure", Figures.pressure(outlet), "above 0");
        }
        if (minimumInlet.compareTo(outlet) < 0) {
            throw Refusal.outOfRange(
                    "minimum inlet pressure", Figures.pressure(minimumInlet), "at least " + Figures.pressure(outlet));
        }
    }

    /** The inlet pressure to ask for when the regulator's own figure is not known. */
    public static Pressure minimumInletFor(Pressure outlet) {
        return Pressure.ofInchesWater(outlet.inchesWater() + GREATEST_LOSS.inchesWater());
    }
}
