package fairflame.quantity;

import fairflame.Refusal;

/** A resistance; positive infinity is an open line. Kept in ohms. */
public record Resistance(double ohms) implements Comparable<Resistance> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = Double.POSITIVE_INFINITY;

    public Resistance {
        // Written so that a value that is not a number is refused as well.
        if (!(ohms >= LOWEST && ohms <= HIGHEST)) {
            throw Refusal.outOfRange("resistance", ohms + " ohm", LOWEST + " to " + HIGHEST + " ohm");
        }
    }

    /** Reads a number with its unit, such as {@code 22kilohm}. */
    public static Resistance parse(String text) {
        return of(Measure.parse(Dimension.RESISTANCE, text));
    }

    /** From a typed measure of the same dimension. */
    public static Resistance of(Measure measure) {
        return new Resistance(measure.in(Unit.OHM));
    }

    /** In ohms. */
    public static Resistance ofOhms(double ohms) {
        return new Resistance(ohms);
    }

    /** In thousands of ohms. */
    public static Resistance ofKilohms(double kilohms) {
        return new Resistance(Unit.KILOHM.toBase(kilohms));
    }

    /** No path at all. */
    public static Resistance open() {
        return new Resistance(Double.POSITIVE_INFINITY);
    }

    @Override
    public int compareTo(Resistance other) {
        return Double.compare(ohms, other.ohms);
    }
}
