package fairflame.screen.bench;

import fairflame.diagnosis.ReadingVerdict;
import fairflame.diagnosis.Value;
import fairflame.quantity.Measure;
import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The picture of a reading while it is being typed. */
final class LiveGauge {
    private LiveGauge() {}

    /** The paper's own picture of the reading when there is one, else one of the reading alone; empty for words. */
    static Optional<Gauge> of(ReadingVerdict verdict, List<Gauge> printed) {
        if (!(verdict.reading().value() instanceof Value.Measured measured)) {
            return Optional.empty();
        }
        var value = measured.measure();
        return printed.stream()
                .filter(gauge -> gauge.unit().equals(value.unit().symbol())
                        && gauge.lowest().compareTo(value.value()) == 0)
                .findFirst()
                .or(() -> Optional.of(alone(verdict, value)));
    }

    private static Gauge alone(ReadingVerdict verdict, Measure value) {
        return new Gauge(
                verdict.title(),
                value.unit().symbol(),
                Optional.empty(),
                value.value().max(BigDecimal.ZERO),
                verdict.allowedLow().map(end -> in(end, value)),
                verdict.allowedHigh().map(end -> in(end, value)),
                shown(verdict.verdict()),
                String.join(" ", verdict.words()));
    }

    private static BigDecimal in(Measure end, Measure value) {
        return end.unit() == value.unit()
                ? end.value()
                : Measure.of(end.in(value.unit()), value.unit()).value().round(new java.math.MathContext(3));
    }

    private static Gauge.Verdict shown(ReadingVerdict.Verdict verdict) {
        return switch (verdict) {
            case GOOD, INFORMATION -> Gauge.Verdict.GOOD;
            case EDGE, DOUBTED -> Gauge.Verdict.EDGE;
            case OUTSIDE -> Gauge.Verdict.OUTSIDE;
        };
    }
}
