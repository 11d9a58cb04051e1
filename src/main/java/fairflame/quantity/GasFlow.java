package fairflame.quantity;

import fairflame.Refusal;

/** A flow of fuel gas at the base conditions of the fuel gas codes (60 F, 30 in Hg). Kept in cubic feet per hour. */
public record GasFlow(double cubicFeetPerHour) implements Comparable<GasFlow> {
    private static final double LOWEST = 0;
    private static final double HIGHEST = 10_000_000;

    public GasFlow {
        // Written so that a value that is not a number is refused as well.
        if (!(cubicFeetPerHour >= LOWEST && cubicFeetPerHour <= HIGHEST)) {
            throw Refusal.outOfRange("gas flow", cubicFeetPerHour + " ft3/h", LOWEST + " to " + HIGHEST + " ft3/h");
        }
    }

    /** Reads a number with its unit, such as {@code 388cfh}. */
    public static GasFlow parse(String text) {
        return of(Measure.parse(Dimension.GAS_FLOW, text));
    }

    /** From a typed measure of the same dimension. */
    public static GasFlow of(Measure measure) {
        return new GasFlow(measure.in(Unit.CUBIC_FOOT_PER_HOUR));
    }

    /** In cubic feet per hour. */
    public static GasFlow ofCubicFeetPerHour(double cubicFeet) {
        return new GasFlow(cubicFeet);
    }

    public GasFlow plus(GasFlow other) {
        return new GasFlow(cubicFeetPerHour + other.cubicFeetPerHour);
    }

    /** The heat in this flow of a gas. */
    public HeatRate heat(HeatingValue value) {
        return new HeatRate(cubicFeetPerHour * value.btuPerCubicFoot());
    }

    @Override
    public int compareTo(GasFlow other) {
        return Double.compare(cubicFeetPerHour, other.cubicFeetPerHour);
    }
}
