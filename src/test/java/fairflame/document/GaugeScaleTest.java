package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeScaleTest {
    private static GaugeScale scale(String lowest, String highest) {
        return GaugeScale.of(new Gauge(
                "Reading",
                "V",
                Optional.empty(),
                new BigDecimal(lowest),
                Optional.empty(),
                Optional.of(new BigDecimal(highest)),
                Gauge.Verdict.GOOD,
                ""));
    }

    @ParameterizedTest
    @CsvSource({
        "3.9, 10.5, 0, 12, 2",
        "15.7, 28.8, 0, 40, 10",
        "22, 1000, 0, 1200, 200",
        "0.4, 0.5, 0, 0.6, 0.1",
        "-3, 10, -5, 15, 5",
        "0, 0, 0, 0, 1"
    })
    void runsOverRoundNumbers(String lowest, String highest, String from, String to, String step) {
        var scale = scale(lowest, highest);
        assertThat(scale.low()).isEqualByComparingTo(from);
        assertThat(scale.high()).isEqualByComparingTo(to);
        assertThat(scale.step()).isEqualByComparingTo(step);
    }

    @Test
    void holdsEveryValueBetweenItsEndsWithFewSteps() {
        for (long seed = 0; seed < 2000; seed++) {
            var random = new Random(seed);
            var value = BigDecimal.valueOf(random.nextInt(2_000_000) - 200_000, random.nextInt(5));
            var other = BigDecimal.valueOf(random.nextInt(2_000_000), random.nextInt(5));
            var scale = scale(value.toPlainString(), other.toPlainString());
            assertThat(scale.level(value)).as("seed %d", seed).isBetween(0.0, 1.0);
            assertThat(scale.level(other)).as("seed %d", seed).isBetween(0.0, 1.0);
            assertThat(scale.ticks()).as("seed %d", seed).hasSizeBetween(2, 9);
        }
    }
}
