package fairflame.quantity;

import fairflame.Refusal;

/** A current; negative when the leads are turned. Kept in amperes. */
public record Current(double amperes) implements Comparable<Current> {
    private static final double LOWEST = -1_000;
    private static final double HIGHEST = 1_000;

    public Current {
        // Written so that a value that is not a number is refused as well.
        if (!(amperes >= LOWEST && amperes <= HIGHEST)) {
            throw Refusal.outOfRange("current", amperes + " A", LOWEST + " to " + HIGHEST + " A");
        }
    }

    /** Reads a number with its unit, such as {@code 0.5a}. */
    public static Current parse(String text) {
        return of(Measure.parse(Dimension.CURRENT, text));
    }

    /** From a typed measure of the same dimension. */
    public static Current of(Measure measure) {
        return new Current(measure.in(Unit.AMPERE));
    }

    /** In amperes. */
    public static Current ofAmperes(double amperes) {
        return new Current(amperes);
    }

    /** In millionths of an ampere. */
    public static Current ofMicroamperes(double microamperes) {
        return new Current(Unit.MICROAMPERE.toBase(microamperes));
    }

    @Override
    public int compareTo(Current other) {
        return Double.compare(amperes, other.amperes);
    }
}
