package fairflame.quantity;

import fairflame.Refusal;

/** A rate of heat: appliance input or output. Kept in Btu per hour. */
public record HeatRate(double btuPerHour) implements Comparable<HeatRate> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = 10_000_000_000.0;

    public HeatRate {
        // Written so that a value that is not a number is refused as well.
        if (!(btuPerHour >= LOWEST && btuPerHour <= HIGHEST)) {
            throw Refusal.outOfRange("heat rate", btuPerHour + " Btu/h", LOWEST + " to " + HIGHEST + " Btu/h");
        }
    }

    /** Reads a number with its unit, such as {@code 400kbtu/h}. */
    public static HeatRate parse(String text) {
        return of(Measure.parse(Dimension.HEAT_RATE, text));
    }

    /** From a typed measure of the same dimension. */
    public static HeatRate of(Measure measure) {
        return new HeatRate(measure.in(Unit.BTU_PER_HOUR));
    }

    /** In Btu per hour. */
    public static HeatRate ofBtuPerHour(double btu) {
        return new HeatRate(btu);
    }

    /** The gas flow that carries this heat. */
    public GasFlow flow(HeatingValue value) {
        return new GasFlow(btuPerHour / value.btuPerCubicFoot());
    }

    public HeatRate plus(HeatRate other) {
        return new HeatRate(btuPerHour + other.btuPerHour);
    }

    @Override
    public int compareTo(HeatRate other) {
        return Double.compare(btuPerHour, other.btuPerHour);
    }
}
