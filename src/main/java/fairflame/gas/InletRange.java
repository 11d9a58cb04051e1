package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Pressure;

/** The inlet pressures that an appliance's rating plate allows. */
public record InletRange(Pressure minimum, Pressure maximum) {
    public InletRange {
        if (minimum.inchesWater() <= 0 || minimum.compareTo(maximum) > 0) {
            throw Refusal.outOfRange(
                    "minimum inlet pressure",
                    Figures.pressure(minimum),
                    "above 0 and up to the maximum of " + Figures.pressure(maximum));
        }
    }
}
