package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Pressure;

/**
 * How far prediction and reading may lie apart and still agree.
 *
 * @param lengths share by which lengths, fittings and the equation itself may be wrong, 0 to 0.5
 * @param clockedFlow share for a clocked flow, 0 to 0.5
 * @param plateFlow share for a flow taken from the rating plate, 0 to 0.5
 * @param gauges both readings of a difference together
 */
public record Tolerance(double lengths, double clockedFlow, double plateFlow, Pressure gauges) {
    private static final double WIDEST = 0.5;

    public Tolerance {
        for (var share : new double[] {lengths, clockedFlow, plateFlow}) {
            if (!(share >= 0 && share <= WIDEST)) {
                throw Refusal.outOfRange("tolerance", Figures.percent(share), "0 to 50 %");
            }
        }
    }

    /**
     * 20 % for lengths and the equation (a general fluid-mechanics computation lies within 18 % of it, see
     * docs/gas-methods.md), 5 % for a clocked flow, 15 % for a plate, 0.2 in w.c. for two readings. Common practice, no
     * source.
     */
    public static Tolerance usual() {
        return new Tolerance(0.20, 0.05, 0.15, Pressure.ofInchesWater(0.2));
    }
}
