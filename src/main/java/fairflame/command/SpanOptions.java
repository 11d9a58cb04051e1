package fairflame.command;

import fairflame.invoice.account.Statement;
import fairflame.visit.Workplace;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Two days, both included: this year up to today when left out. */
final class SpanOptions {
    @Option(names = "--from", paramLabel = "DAY", description = "first day; the first of January when left out")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DAY", description = "last day; today when left out")
    private @Nullable LocalDate to;

    Statement.Span span(Workplace workplace) {
        var last = to == null ? workplace.today() : to;
        return new Statement.Span(from == null ? last.withDayOfYear(1) : from, last);
    }
}
