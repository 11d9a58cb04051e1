package fairflame.visit;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Account;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import fairflame.quote.Quote;
import fairflame.store.QuoteRow;
import fairflame.store.Receipt;
import fairflame.store.Records;
import fairflame.store.StoredVisit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * All papers of one visit, for the office's list.
 *
 * @param state where it stands, as stored; empty while it is a draft only
 * @param quote latest revision
 * @param bills invoices with the payments received up to now
 */
public record VisitPapers(
        String visit,
        String customer,
        LocalDate on,
        Optional<State> state,
        String text,
        Optional<Quote> quote,
        Optional<SignedRevision> signed,
        List<Bill> bills) {
    public VisitPapers {
        bills = List.copyOf(bills);
    }

    /**
     * An invoice and what came in for it.
     *
     * @param due what is still to be paid
     */
    public record Bill(Invoice invoice, List<Payment> payments, Money due) {
        public Bill {
            payments = List.copyOf(payments);
        }
    }

    /** The papers of every stored visit. */
    public static List<VisitPapers> all(Workplace workplace) {
        return workplace
                .store()
                .reading(records -> records.visits().all().stream()
                        .map(visit -> of(records, visit))
                        .toList());
    }

    /** The papers of one visit; empty when it is not stored. */
    public static Optional<VisitPapers> find(Workplace workplace, String visit) {
        return workplace.store().reading(records -> records.visits().find(visit).map(stored -> of(records, stored)));
    }

    private static VisitPapers of(Records records, StoredVisit visit) {
        var number = records.quotes().rows().stream()
                .filter(row -> row.visit().equals(visit.id()))
                .reduce((one, other) -> one.revision() >= other.revision() ? one : other)
                .map(QuoteRow::number);
        return new VisitPapers(
                visit.id(),
                visit.customer(),
                visit.on(),
                state(visit.state()),
                visit.text(),
                number.flatMap(each -> records.quotes().latest(each)),
                number.flatMap(each -> records.agreements().latest(each)),
                number.map(each -> bills(records, each)).orElse(List.of()));
    }

    private static List<Bill> bills(Records records, String quote) {
        var invoices = records.invoices().ofQuote(quote);
        if (invoices.isEmpty()) {
            return List.of();
        }
        var payments =
                records.payments().ofQuote(quote).stream().map(Receipt::payment).toList();
        var account = new Account(invoices, payments);
        return invoices.stream()
                .filter(paper -> paper.kind() != Invoice.Kind.CREDIT)
                .map(invoice -> account.shown(invoice.number()))
                .map(invoice -> new Bill(invoice, invoice.payments(), invoice.balance()))
                .toList();
    }

    private static Optional<State> state(String word) {
        for (var state : State.values()) {
            if (state.word().equals(word)) {
                return Optional.of(state);
            }
        }
        return Optional.empty();
    }
}
