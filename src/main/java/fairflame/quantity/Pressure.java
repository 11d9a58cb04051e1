package fairflame.quantity;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A gauge pressure, or the drop between two. Kept in inches of water, the unit that the instrument shows. */
public record Pressure(double inchesWater) implements Comparable<Pressure> {
    private static final double LOWEST = 0;
    private static final int MOST_PLACES = 3;
    private static final double HIGHEST = 100 * 27.6799;

    public Pressure {
        // Written so that a value that is not a number is refused as well.
        if (!(inchesWater >= LOWEST && inchesWater <= HIGHEST)) {
            throw Refusal.outOfRange("pressure", inchesWater + " in w.c.", LOWEST + " to " + HIGHEST + " in w.c.");
        }
    }

    /** Reads a number with its unit, such as {@code 7inwc}. */
    public static Pressure parse(String text) {
        return of(Measure.parse(Dimension.PRESSURE, text));
    }

    /** From a typed measure of the same dimension. */
    public static Pressure of(Measure measure) {
        return new Pressure(measure.in(Unit.INCH_WATER));
    }

    /** In inches of water column. */
    public static Pressure ofInchesWater(double inches) {
        return new Pressure(inches);
    }

    /** In pounds per square inch. */
    public static Pressure ofPsi(double psi) {
        return new Pressure(Unit.PSI.toBase(psi));
    }

    /** In pounds per square inch. */
    public double psi() {
        return Unit.PSI.fromBase(inchesWater);
    }

    /** The drop from this pressure to a lower one; refused when the other is higher. */
    public Pressure dropTo(Pressure lower) {
        return new Pressure(inchesWater - lower.inchesWater);
    }

    /**
     * Inches of water to be printed beside the least that is needed: one decimal, or as many more, up to three, as it takes
     * not to print a pressure that is too low as if it were enough.
     */
    public BigDecimal inchesBeside(Pressure least) {
        int places = 1;
        while (places < MOST_PLACES && compareTo(least) < 0 && rounded(places).compareTo(least.rounded(places)) >= 0) {
            places++;
        }
        return rounded(places);
    }

    private BigDecimal rounded(int places) {
        return BigDecimal.valueOf(inchesWater).setScale(places, RoundingMode.HALF_UP);
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(inchesWater, other.inchesWater);
    }
}
