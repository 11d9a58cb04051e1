package fairflame.visit;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Invoice;
import fairflame.invoice.Payment;
import fairflame.quote.Quote;
import fairflame.store.Records;
import java.time.LocalDate;
import java.util.ArrayList;
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

        static Bill of(Invoice invoice, List<Payment> later) {
            var known = invoice.payments().stream().map(Payment::id).toList();
            var all = new ArrayList<>(invoice.payments());
            later.stream().filter(payment -> !known.contains(payment.id())).forEach(all::add);
            var paid = all.stream().map(Payment::amount).reduce(Money.zero(invoice.currency()), Money::plus);
            return new Bill(invoice, all, invoice.totals().total().minus(paid));
        }
    }

    /** The papers of every stored visit. */
    public static List<VisitPapers> all(Workplace workplace) {
        return workplace.store().reading(records -> {
            var found = new ArrayList<VisitPapers>();
            for (var visit : records.visits().all()) {
                var row = records.quotes().rows().stream()
                        .filter(each -> each.visit().equals(visit.id()))
                        .reduce((one, other) -> one.revision() >= other.revision() ? one : other);
                found.add(new VisitPapers(
                        visit.id(),
                        visit.customer(),
                        visit.on(),
                        state(visit.state()),
                        visit.text(),
                        row.flatMap(each -> records.quotes().latest(each.number())),
                        row.flatMap(each -> records.agreements().latest(each.number())),
                        row.map(each -> bills(records, each.number())).orElse(List.of())));
            }
            return found;
        });
    }

    private static List<Bill> bills(Records records, String quote) {
        return records.invoices().ofQuote(quote).stream()
                .map(invoice -> {
                    var payments = records.payments().ofInvoice(invoice.number()).stream()
                            .map(receipt -> receipt.payment())
                            .toList();
                    return Bill.of(invoice, payments);
                })
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
