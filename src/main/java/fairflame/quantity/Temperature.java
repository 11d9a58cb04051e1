package fairflame.quantity;

import fairflame.Refusal;

/** A temperature. Kept in degrees Fahrenheit. */
public record Temperature(double fahrenheit) implements Comparable<Temperature> {
    private static final double LOWEST = -100;
    private static final double HIGHEST = 3_000;

    public Temperature {
        // Written so that a value that is not a number is refused as well.
        if (!(fahrenheit >= LOWEST && fahrenheit <= HIGHEST)) {
            throw Refusal.outOfRange("temperature", fahrenheit + " F", LOWEST + " to " + HIGHEST + " F");
        }
    }

    /** Reads a number with its unit, such as {@code 82f}. */
    public static Temperature parse(String text) {
        return of(Measure.parse(Dimension.TEMPERATURE, text));
    }

    /** From a typed measure of the same dimension. */
    public static Temperature of(Measure measure) {
        return new Temperature(measure.in(Unit.FAHRENHEIT));
    }

    /** In degrees Fahrenheit. */
    public static Temperature ofFahrenheit(double degrees) {
        return new Temperature(degrees);
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(fahrenheit, other.fahrenheit);
    }
}
