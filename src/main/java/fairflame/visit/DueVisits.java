package fairflame.visit;

import fairflame.invoice.permit.Due;
import java.util.List;
import java.util.Optional;

/** What is due, each with the visit whose papers it is about. */
public final class DueVisits {
    private final Workplace workplace;

    public DueVisits(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * One thing that is due.
     *
     * @param document number of the quote, invoice or licence
     * @param visit id of the visit; absent for a licence
     */
    public record Row(Due due, String document, Optional<String> visit) {}

    /** Everything that is due, the earliest day first. */
    public List<Row> all() {
        var due = new Permits(workplace).due();
        return workplace
                .store()
                .reading(records -> due.stream()
                        .map(each -> {
                            var document = each.key().substring(each.key().indexOf('-') + 1);
                            var quote = each.kind() == Due.Kind.INVOICE_DUE
                                    ? records.invoices().find(document).map(invoice -> invoice.quote())
                                    : Optional.of(document);
                            return new Row(
                                    each,
                                    document,
                                    quote.flatMap(number -> records.quotes().latest(number))
                                            .map(found -> found.visit()));
                        })
                        .toList());
    }
}
