package fairflame.quantity;

import fairflame.Refusal;

/** A voltage, alternating, root mean square. Kept in volts. */
public record Voltage(double volts) implements Comparable<Voltage> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = 1_000;

    public Voltage {
        // Written so that a value that is not a number is refused as well.
        if (!(volts >= LOWEST && volts <= HIGHEST)) {
            throw Refusal.outOfRange("voltage", volts + " V", LOWEST + " to " + HIGHEST + " V");
        }
    }

    /** Reads a number with its unit, such as {@code 24v}. */
    public static Voltage parse(String text) {
        return of(Measure.parse(Dimension.VOLTAGE, text));
    }

    /** From a typed measure of the same dimension. */
    public static Voltage of(Measure measure) {
        return new Voltage(measure.in(Unit.VOLT));
    }

    /** In volts. */
    public static Voltage ofVolts(double volts) {
        return new Voltage(volts);
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(volts, other.volts);
    }
}
