package fairflame.quantity;

import fairflame.Refusal;

/** The heat in a cubic foot of fuel gas. Kept in Btu per cubic foot. */
public record HeatingValue(double btuPerCubicFoot) implements Comparable<HeatingValue> {
    private static final double LOWEST = 100;
    private static final double HIGHEST = 4_000;

    public HeatingValue {
        // Written so that a value that is not a number is refused as well.
        if (!(btuPerCubicFoot >= LOWEST && btuPerCubicFoot <= HIGHEST)) {
            throw Refusal.outOfRange(
                    "heating value", btuPerCubicFoot + " Btu/ft3", LOWEST + " to " + HIGHEST + " Btu/ft3");
        }
    }

    /** Reads a number with its unit, such as {@code 1030btu/ft3}. */
    public static HeatingValue parse(String text) {
        return of(Measure.parse(Dimension.HEATING_VALUE, text));
    }

    /** From a typed measure of the same dimension. */
    public static HeatingValue of(Measure measure) {
        return new HeatingValue(measure.in(Unit.BTU_PER_CUBIC_FOOT));
    }

    /** In Btu per cubic foot. */
    public static HeatingValue ofBtuPerCubicFoot(double btu) {
        return new HeatingValue(btu);
    }

    @Override
    public int compareTo(HeatingValue other) {
        return Double.compare(btuPerCubicFoot, other.btuPerCubicFoot);
    }
}
