package fairflame.visit;

import fairflame.diagnosis.ReadingVerdict;
import fairflame.diagnosis.Value;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns judged readings into the pictures that stand on paper and screen. */
public final class Gauges {
    private Gauges() {}

    /** Gas pressure and valve voltage, each at rest and while firing, where both the check and its value are there. */
    public static List<Gauge> of(List<ReadingVerdict> verdicts) {
        var gauges = new ArrayList<Gauge>();
        gauge(verdicts, "gas-static", "gas-firing", Unit.INCH_WATER, "Gas pressure while the burner runs")
                .ifPresent(gauges::add);
        gauge(verdicts, "transformer-idle", "valve-low", Unit.VOLT, "Voltage that holds the gas valve open")
                .ifPresent(gauges::add);
        return List.copyOf(gauges);
    }

    private static Optional<Gauge> gauge(
            List<ReadingVerdict> verdicts, String rest, String firing, Unit unit, String title) {
        return lowest(verdicts, firing, unit)
                .map(low -> new Gauge(
                        title,
                        unit.symbol(),
                        lowest(verdicts, rest, unit).flatMap(verdict -> value(verdict, unit)),
                        value(low, unit).orElseThrow(),
                        low.allowedLow().map(measure -> decimal(measure, unit)),
                        low.allowedHigh().map(measure -> decimal(measure, unit)),
                        verdict(low.verdict()),
                        low.words().get(0)));
    }

    private static Optional<ReadingVerdict> lowest(List<ReadingVerdict> verdicts, String check, Unit unit) {
        return verdicts.stream()
                .filter(verdict -> verdict.reading().check().equals(check))
                .filter(verdict -> value(verdict, unit).isPresent())
                .min(Comparator.comparing(verdict -> value(verdict, unit).orElseThrow()));
    }

    private static Optional<BigDecimal> value(ReadingVerdict verdict, Unit unit) {
        return verdict.reading().value() instanceof Value.Measured measured
                ? Optional.of(decimal(measured.measure(), unit))
                : Optional.empty();
    }

    private static BigDecimal decimal(Measure measure, Unit unit) {
        return measure.unit() == unit
                ? measure.value()
                : Measure.of(measure.in(unit), unit).value();
    }

    private static Gauge.Verdict verdict(ReadingVerdict.Verdict verdict) {
        return switch (verdict) {
            case GOOD -> Gauge.Verdict.GOOD;
            case OUTSIDE -> Gauge.Verdict.OUTSIDE;
            case INFORMATION, EDGE, DOUBTED -> Gauge.Verdict.EDGE;
        };
    }
}
