package fairflame.repair;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.util.List;
import java.util.Locale;

/**
 * The heat that an uncovered pool gives off, by its surface and how much warmer than the air it is kept: the heater has
 * to give at least that much.
 *
 * @param length and width of the surface
 * @param rise of the water above the air of the coldest month of use
 */
public record HeaterSize(Length length, Length width, Measure rise) {
    /** Btu per hour for a square foot and a degree: US DOE formula as quoted by a trade paper, S-DOE2. */
    private static final double OUTPUT_PER_SQUARE_FOOT = 12;
    /** The same as burner input, from a textbook, S-SIZE15: 12 divided by an efficiency of 0.80. */
    private static final double INPUT_PER_SQUARE_FOOT = 15;

    public HeaterSize {
        if (rise.unit().dimension() != Dimension.TEMPERATURE_RISE || rise.in(Unit.FAHRENHEIT_RISE) < 0) {
            throw Refusal.outOfRange("rise above the air", rise, "zero or more degrees Fahrenheit or Celsius");
        }
    }

    /** Heater output that holds the temperature. */
    public HeatRate output() {
        return times(OUTPUT_PER_SQUARE_FOOT);
    }

    /** Burner input for it. */
    public HeatRate input() {
        return times(INPUT_PER_SQUARE_FOOT);
    }

    private HeatRate times(double factor) {
        return HeatRate.ofBtuPerHour(length.feet() * width.feet() * rise.in(Unit.FAHRENHEIT_RISE) * factor);
    }

    /** The result and what was assumed, a sentence each. */
    public List<String> sentences() {
        return List.of(
                String.format(
                        Locale.ROOT, "The surface gives off about %,.0f Btu/h when uncovered.", output().btuPerHour()),
                "Assumed: " + rise
                        + " above the air, a light wind of about 3.5 miles an hour (from memory, not checked).");
    }
}
