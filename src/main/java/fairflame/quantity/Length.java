package fairflame.quantity;

import fairflame.Refusal;

/** A length: of pipe, of a run, an inside diameter. Kept in feet. */
public record Length(double feet) implements Comparable<Length> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = 100_000;

    public Length {
        // Written so that a value that is not a number is refused as well.
        if (!(feet >= LOWEST && feet <= HIGHEST)) {
            throw Refusal.outOfRange("length", feet + " ft", LOWEST + " to " + HIGHEST + " ft");
        }
    }

    /** Reads a number with its unit, such as {@code 60ft}. */
    public static Length parse(String text) {
        return of(Measure.parse(Dimension.LENGTH, text));
    }

    /** From a typed measure of the same dimension. */
    public static Length of(Measure measure) {
        return new Length(measure.in(Unit.FOOT));
    }

    /** In feet. */
    public static Length ofFeet(double feet) {
        return new Length(feet);
    }

    /** In inches. */
    public static Length ofInches(double inches) {
        return new Length(Unit.INCH.toBase(inches));
    }

    /** In inches. */
    public double inches() {
        return Unit.INCH.fromBase(feet);
    }

    public Length plus(Length other) {
        return new Length(feet + other.feet);
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(feet, other.feet);
    }
}
