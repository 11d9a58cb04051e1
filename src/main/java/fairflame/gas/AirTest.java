package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Pressure;
import fairflame.quantity.Temperature;

/**
 * The pressure that a tight line under test shows after its air has warmed or cooled, so that a cold evening is not taken
 * for a leak. 2018 IFGC A.7.5 (2015: A.6.5): absolute pressure goes with absolute temperature at a volume that stays.
 */
public final class AirTest {
    // 2018 IFGC A.7.5: 14.7 psi for the barometer, 460 F to absolute temperature (the 2015 excerpt adds 459; both give
    // the
    // printed whole psi).
    private static final double BAROMETER_PSI = 14.7;
    private static final double ABSOLUTE = 460;

    private AirTest() {}

    /**
     * Pressure of the closed line at the second temperature.
     *
     * @param start gauge pressure at the first temperature
     * @param from temperature of the air in the pipe at first, -40 to 150 F
     * @param to temperature later, -40 to 150 F
     */
    public static Pressure after(Pressure start, Temperature from, Temperature to) {
        var absolute = (start.psi() + BAROMETER_PSI) * absolute(to) / absolute(from);
        if (absolute < BAROMETER_PSI) {
            throw Refusal.outOfRange(
                    "test pressure",
                    Figures.pressure(start),
                    "enough that it stays above the air outside when it cools");
        }
        return Pressure.ofPsi(absolute - BAROMETER_PSI);
    }

    private static double absolute(Temperature temperature) {
        if (temperature.fahrenheit() < -40 || temperature.fahrenheit() > 150) {
            throw Refusal.outOfRange("temperature of the pipe", temperature.fahrenheit() + " F", "-40 to 150 F");
        }
        return temperature.fahrenheit() + ABSOLUTE;
    }
}
