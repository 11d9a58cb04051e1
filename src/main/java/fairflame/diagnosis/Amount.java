package fairflame.diagnosis;

import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;

/**
 * A number with its dimension while a rule is worked out, in the base unit of the dimension. An open line is infinite.
 *
 * @param base value in the base unit; never "not a number"
 */
record Amount(double base, Dimension dimension) {
    // Two typed decimals and their difference must compare as on paper: 10.1 - 8.1 is 2.0, not a hair less.
    private static final double SAME = 1e-9;

    Amount {
        if (Double.isNaN(base)) {
            throw new IllegalArgumentException("not a number: " + dimension.words());
        }
    }

    static Amount of(Measure measure) {
        var unit = measure.unit();
        return new Amount(measure.in(Unit.baseOf(unit.dimension())), unit.dimension());
    }

    static Amount open() {
        return new Amount(Double.POSITIVE_INFINITY, Dimension.RESISTANCE);
    }

    Amount plus(Amount other) {
        return new Amount(base + other.base, dimension);
    }

    /** The difference; between two temperatures it is a rise. */
    Amount minus(Amount other) {
        return new Amount(base - other.base, differenceOf(dimension, other.dimension));
    }

    Amount times(double factor) {
        return new Amount(base * factor, dimension);
    }

    /** The dimension of a difference: two temperatures differ by a rise, all else keeps its dimension. */
    static Dimension differenceOf(Dimension left, Dimension right) {
        return left == Dimension.TEMPERATURE && right == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_RISE : left;
    }

    /** Below, the same or above: a negative number, zero or a positive one. */
    int against(Amount other) {
        double size = Math.max(Math.abs(base), Math.abs(other.base));
        if (Double.isFinite(size) && Math.abs(base - other.base) <= SAME * Math.max(size, SAME)) {
            return 0;
        }
        return Double.compare(base, other.base);
    }
}
