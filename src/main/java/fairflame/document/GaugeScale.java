package fairflame.document;

import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The scale of a gauge's picture: from zero (or below, when a value is) to a round number above all its values. */
record GaugeScale(BigDecimal low, BigDecimal high, BigDecimal step) {
    private static final BigDecimal ROOM = new BigDecimal("1.05");
    private static final int MOST_STEPS = 6;

    static GaugeScale of(Gauge gauge) {
        var values = Stream.of(Optional.of(gauge.lowest()), gauge.resting(), gauge.allowedLow(), gauge.allowedHigh())
                .flatMap(Optional::stream)
                .toList();
        var largest = values.stream().reduce(BigDecimal.ZERO, BigDecimal::max).multiply(ROOM);
        var least = values.stream().reduce(BigDecimal.ZERO, BigDecimal::min);
        var step = step(largest.subtract(least));
        return new GaugeScale(up(least, step, RoundingMode.FLOOR), up(largest, step, RoundingMode.CEILING), step);
    }

    // The smallest of 1, 2, 5 times a power of ten that needs at most six steps.
    private static BigDecimal step(BigDecimal span) {
        if (span.signum() == 0) {
            return BigDecimal.ONE;
        }
        var rough = span.divide(BigDecimal.valueOf(MOST_STEPS), MathContext.DECIMAL64);
        var power = BigDecimal.ONE.scaleByPowerOfTen(rough.precision() - rough.scale() - 1);
        return Stream.of(1, 2, 5, 10)
                .map(factor -> power.multiply(BigDecimal.valueOf(factor)))
                .filter(step -> step.compareTo(rough) >= 0)
                .findFirst()
                .orElse(power);
    }

    private static BigDecimal up(BigDecimal value, BigDecimal step, RoundingMode mode) {
        return value.divide(step, 0, mode).multiply(step);
    }

    List<BigDecimal> ticks() {
        var ticks = new ArrayList<BigDecimal>();
        for (var tick = low; tick.compareTo(high) <= 0; tick = tick.add(step)) {
            ticks.add(tick);
        }
        return ticks;
    }

    /** Share of the scale's height at which a value stands, 0 to 1. */
    double level(BigDecimal value) {
        var span = high.subtract(low);
        if (span.signum() == 0) {
            return 0;
        }
        return value.subtract(low).divide(span, MathContext.DECIMAL64).doubleValue();
    }
}
