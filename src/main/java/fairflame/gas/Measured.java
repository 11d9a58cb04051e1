package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.Optional;

/**
 * Gas pressures read on site.
 *
 * @param still at the appliance with no gas flowing
 * @param firing the lowest at the appliance while it fires
 * @param meterFiring at the meter or tank regulator in the same state, where it was read
 * @param clocked flow of the appliance by the meter's dial, where it was clocked
 */
public record Measured(Pressure still, Pressure firing, Optional<Pressure> meterFiring, Optional<GasFlow> clocked) {
    // Two gauges differ: a reading at the meter a little below the one at the appliance is no contradiction. Common
    // practice, no source.
    private static final double GAUGES_DIFFER = 0.3;

    public Measured {
        if (firing.compareTo(still) > 0) {
            throw Refusal.outOfRange(
                    "pressure while firing",
                    Figures.pressure(firing),
                    "up to the still pressure of " + Figures.pressure(still));
        }
        meterFiring.ifPresent(meter -> {
            if (meter.inchesWater() < firing.inchesWater() - GAUGES_DIFFER) {
                throw Refusal.outOfRange(
                        "pressure at the meter while firing",
                        Figures.pressure(meter),
                        "at least the " + Figures.pressure(firing) + " at the appliance, as gas flows from there");
            }
        });
    }

    /** Readings at the appliance only. */
    public static Measured at(Pressure still, Pressure firing) {
        return new Measured(still, firing, Optional.empty(), Optional.empty());
    }

    Pressure dip() {
        return still.dropTo(firing);
    }

    /** The part of the dip behind the meter; all of it while the meter was not read. */
    Pressure pipeDip() {
        return meterFiring
                .map(meter -> Pressure.ofInchesWater(Math.max(0, meter.inchesWater() - firing.inchesWater())))
                .orElseGet(this::dip);
    }
}
