package fairflame.screen.office;

import fairflame.Refusal;
import fairflame.invoice.account.Statement;
import java.time.LocalDate;
import java.util.Optional;

/** Two typed days, both included; at first from the year's beginning to today. */
public final class SpanModel {
    private final Typed from;
    private final Typed to;

    public SpanModel(LocalDate today) {
        from = new Typed(today.withDayOfYear(1).toString());
        to = new Typed(today.toString());
    }

    public Typed from() {
        return from;
    }

    public Typed to() {
        return to;
    }

    /** The days; the field that cannot be read says what is allowed. */
    public Optional<Statement.Span> read() {
        var first = from.day("first day");
        var last = to.day("last day");
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Statement.Span(first.get(), last.get()));
        } catch (Refusal refused) {
            to.refusal().set(refused.getMessage());
            return Optional.empty();
        }
    }
}
