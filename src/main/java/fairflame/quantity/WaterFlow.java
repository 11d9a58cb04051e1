package fairflame.quantity;

import fairflame.Refusal;

/** A flow of pool water. Kept in US gallons per minute. */
public record WaterFlow(double gallonsPerMinute) implements Comparable<WaterFlow> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = 10_000;

    public WaterFlow {
        // Written so that a value that is not a number is refused as well.
        if (!(gallonsPerMinute >= LOWEST && gallonsPerMinute <= HIGHEST)) {
            throw Refusal.outOfRange("water flow", gallonsPerMinute + " gpm", LOWEST + " to " + HIGHEST + " gpm");
        }
    }

    /** Reads a number with its unit, such as {@code 65gpm}. */
    public static WaterFlow parse(String text) {
        return of(Measure.parse(Dimension.WATER_FLOW, text));
    }

    /** From a typed measure of the same dimension. */
    public static WaterFlow of(Measure measure) {
        return new WaterFlow(measure.in(Unit.GALLON_PER_MINUTE));
    }

    /** In US gallons per minute. */
    public static WaterFlow ofGallonsPerMinute(double gallons) {
        return new WaterFlow(gallons);
    }

    @Override
    public int compareTo(WaterFlow other) {
        return Double.compare(gallonsPerMinute, other.gallonsPerMinute);
    }
}
