package fairflame.quote;

import fairflame.wording.Spoken;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * What was measured against what is allowed: the data of one small picture on the paper.
 *
 * @param title plain words, such as "Gas pressure while the burner runs"
 * @param unit printed unit
 * @param resting value at rest (static pressure, idle voltage); empty when there is none
 * @param lowest value while firing
 * @param allowedLow lower end of the allowed band; empty when there is none
 * @param allowedHigh upper end of the allowed band; empty when there is none
 * @param verdict good, edge or outside
 * @param words the verdict in plain words
 */
public record Gauge(
        @Spoken String title,
        String unit,
        Optional<BigDecimal> resting,
        BigDecimal lowest,
        Optional<BigDecimal> allowedLow,
        Optional<BigDecimal> allowedHigh,
        Verdict verdict,
        @Spoken String words) {
    /** Told by word and shape, never by colour alone. */
    public enum Verdict {
        GOOD,
        EDGE,
        OUTSIDE
    }
}
