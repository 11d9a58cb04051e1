package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.HeatingValue;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import fairflame.quantity.Unit;

/**
 * Firing rate by the meter's dial: everything else off, high fire, whole turns.
 *
 * @param volume that passed, 0.25 to 100 cubic feet
 * @param time that it took, 3 to 1,800 seconds
 */
public record MeterClocking(Measure volume, Measure time) {
    private static final double SECONDS_PER_HOUR = 3_600;

    public MeterClocking {
        inRange("volume on the dial", volume.in(Unit.CUBIC_FOOT), 0.25, 100, "ft3");
        inRange("time on the dial", time.in(Unit.SECOND), 3, 1_800, "s");
    }

    /** Reads both, such as {@code 2ft3} and {@code 18s}. */
    public static MeterClocking parse(String volume, String time) {
        return new MeterClocking(Measure.parse(Dimension.GAS_VOLUME, volume), Measure.parse(Dimension.TIME, time));
    }

    private static void inRange(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw Refusal.outOfRange(
                    what,
                    Figures.plain(value) + " " + unit,
                    Figures.plain(least) + " to " + Figures.plain(most) + " " + unit);
        }
    }

    /** Flow as the dial shows it: 3600 x cubic feet / seconds. */
    public GasFlow flow() {
        return GasFlow.ofCubicFeetPerHour(SECONDS_PER_HOUR * volume.in(Unit.CUBIC_FOOT) / time.in(Unit.SECOND));
    }

    /**
     * Flow of a meter that runs at elevated pressure and does not correct for it: the dial counts compressed feet. Factor
     * (P + 14.4) / 14.65 with P in psi: from memory, not checked; the supplier's factor goes before it.
     */
    public GasFlow flowAt(Pressure meter) {
        return GasFlow.ofCubicFeetPerHour(flow().cubicFeetPerHour() * (meter.psi() + 14.4) / 14.65);
    }

    public HeatRate heat(HeatingValue value) {
        return flow().heat(value);
    }
}
