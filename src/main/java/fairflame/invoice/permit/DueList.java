package fairflame.invoice.permit;

import fairflame.invoice.account.Ageing;
import fairflame.quote.Quote;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Collects what is due, each thing once, the earliest day first. */
public final class DueList {
    private final List<Due> found = new ArrayList<>();

    /** The next thing to do for a permit, and its last day while the inspection has not passed. */
    public DueList permit(Permit permit, String customer) {
        var quote = permit.quote();
        switch (permit.state()) {
            // An emergency repair may begin first; the application follows on the next working day (IFGC 106.1).
            case NEEDED ->
                add(
                        "apply-" + quote,
                        Due.Kind.APPLY,
                        permit.opened(),
                        "Apply for the permit of " + quote,
                        permit.place() + ", " + customer);
            case BOOKED ->
                permit.inspection()
                        .ifPresent(day -> add(
                                "inspection-" + quote,
                                Due.Kind.INSPECTION,
                                day,
                                "Inspection for " + quote + ", permit " + permit.number(),
                                permit.place() + ", " + customer));
            default -> {}
        }
        if (!permit.state().settled()) {
            permit.expires()
                    .ifPresent(day -> add(
                            "permit-" + quote,
                            Due.Kind.PERMIT_ENDS,
                            day,
                            "Permit " + permit.number() + " ends",
                            quote + ", " + customer));
        }
        return this;
    }

    public DueList licence(String fitter, String licence, LocalDate ends) {
        return add("licence-" + licence, Due.Kind.LICENCE_ENDS, ends, "Licence " + licence + " ends", fitter);
    }

    /** An unsigned quote that can still be signed. */
    public DueList quote(Quote quote, LocalDate today) {
        if (!quote.validUntil().isBefore(today)) {
            add(
                    "quote-" + quote.number(),
                    Due.Kind.QUOTE_ENDS,
                    quote.validUntil(),
                    "Quote " + quote.number() + " can be signed until today",
                    quote.customer().name());
        }
        return this;
    }

    /** The last day on which a customer may cancel. */
    public DueList cancel(String quote, Optional<LocalDate> lastDay, String customer) {
        lastDay.ifPresent(day -> add(
                "cancel-" + quote,
                Due.Kind.CANCEL_ENDS,
                day,
                "Right to cancel " + quote + " ends",
                customer + "; no work before this day is over without the customer's waiver"));
        return this;
    }

    public DueList invoices(Ageing ageing) {
        ageing.rows().forEach(row -> {
            var invoice = row.item().invoice();
            add(
                    "invoice-" + invoice.number(),
                    Due.Kind.INVOICE_DUE,
                    invoice.due(),
                    "Invoice " + invoice.number() + " is due, " + row.item().open() + " open",
                    invoice.customer().name());
        });
        return this;
    }

    private DueList add(String key, Due.Kind kind, LocalDate day, String title, String details) {
        if (found.stream().noneMatch(due -> due.key().equals(key))) {
            found.add(new Due(key, kind, day, title, details));
        }
        return this;
    }

    public List<Due> all() {
        return found.stream()
                .sorted(Comparator.comparing(Due::day).thenComparing(Due::key))
                .toList();
    }
}
