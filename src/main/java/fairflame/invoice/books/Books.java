package fairflame.invoice.books;

import fairflame.invoice.Invoice;
import fairflame.invoice.account.Movement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * Writes the journal. A deposit is a liability until an invoice uses it up; a credit note mirrors its invoice; a refund
 * first uses up what is left of the deposit; a write-off is an expense for its whole amount (whether its tax can be
 * claimed back is for the bookkeeper, docs/formats/journal.md).
 */
public final class Books {
    private final Chart chart;
    private final List<Entry> entries = new ArrayList<>();
    /** By quote: deposits not used up yet, and what the customer owes beyond them. */
    private final Map<String, Money> deposits = new HashMap<>();

    private final Map<String, Money> receivable = new HashMap<>();

    private Books(Chart chart) {
        this.chart = chart;
    }

    /** The whole journal, in the order of days; on one day deposits, invoices, credit notes, then the rest. */
    public static List<Entry> journal(Chart chart, Collection<Invoice> papers, Collection<Movement> movements) {
        var events = new ArrayList<Event>();
        var books = new Books(chart);
        papers.forEach(paper -> events.add(new Event(
                paper.issued(), paper.kind() == Invoice.Kind.CREDIT ? 2 : 1, paper.number(), () -> books.book(paper))));
        movements.forEach(movement ->
                events.add(new Event(movement.on(), rank(movement), movement.id(), () -> books.book(movement))));
        events.sort(Comparator.comparing(Event::on).thenComparing(Event::rank).thenComparing(Event::document));
        events.forEach(event -> event.work().run());
        return List.copyOf(books.entries);
    }

    private record Event(LocalDate on, int rank, String document, Runnable work) {}

    private static int rank(Movement movement) {
        return movement.kind() == Movement.Kind.PAYMENT ? (movement.deposit() ? 0 : 3) : 4;
    }

    private void book(Invoice paper) {
        var entry =
                new Entry.Builder().debit(chart.of("receivable"), paper.totals().total());
        paper.lines()
                .forEach(line -> entry.credit(chart.of("revenue", line.kind().word()), line.net()));
        entry.debit(chart.of("discounts"), paper.totals().discount());
        paper.totals().taxes().forEach(tax -> entry.credit(chart.of("sales-tax", tax.name()), tax.amount()));
        var words = paper.kind() == Invoice.Kind.CREDIT ? "Credit note for " + paper.corrects() : "Invoice";
        add(paper.issued(), paper.number(), words + ", " + paper.customer().name(), entry);
        receivable.merge(paper.quote(), paper.totals().total(), Money::plus);
        applyDeposit(paper.issued(), paper.number(), paper.quote());
    }

    private void book(Movement movement) {
        switch (movement.kind()) {
            case PAYMENT -> paid(movement);
            case REFUND -> refunded(movement);
            case WRITE_OFF -> writtenOff(movement);
        }
    }

    private void paid(Movement movement) {
        var bank = chart.of("bank", movement.method());
        var account = movement.deposit() ? "deposits" : "receivable";
        var words = movement.deposit() ? "Deposit, " : "Payment, ";
        add(
                movement,
                words + movement.method(),
                new Entry.Builder().debit(bank, movement.amount()).credit(chart.of(account), movement.amount()));
        if (movement.deposit()) {
            deposits.merge(movement.quote(), movement.amount(), Money::plus);
            applyDeposit(movement.on(), movement.id(), movement.quote());
        } else {
            receivable.merge(movement.quote(), movement.amount().negated(), Money::plus);
        }
    }

    private void refunded(Movement movement) {
        var kept = deposits.getOrDefault(movement.quote(), movement.amount().withAmount(0));
        var fromDeposit = kept.isLessThan(movement.amount()) ? kept : movement.amount();
        var rest = movement.amount().minus(fromDeposit);
        add(
                movement,
                "Refund, " + movement.method() + ": " + movement.reason(),
                new Entry.Builder()
                        .debit(chart.of("deposits"), fromDeposit)
                        .debit(chart.of("receivable"), rest)
                        .credit(chart.of("bank", movement.method()), movement.amount()));
        deposits.merge(movement.quote(), fromDeposit.negated(), Money::plus);
        receivable.merge(movement.quote(), rest, Money::plus);
    }

    private void writtenOff(Movement movement) {
        add(
                movement,
                "Written off: " + movement.reason(),
                new Entry.Builder()
                        .debit(chart.of("bad-debt"), movement.amount())
                        .credit(chart.of("receivable"), movement.amount()));
        receivable.merge(movement.quote(), movement.amount().negated(), Money::plus);
    }

    private void applyDeposit(LocalDate on, String document, String quote) {
        var kept = deposits.get(quote);
        var owed = receivable.get(quote);
        if (kept == null || owed == null || !kept.isPositive() || !owed.isPositive()) {
            return;
        }
        var used = kept.isLessThan(owed) ? kept : owed;
        var entry = new Entry.Builder().debit(chart.of("deposits"), used).credit(chart.of("receivable"), used);
        add(on, document, "Deposit used for " + quote, entry);
        deposits.put(quote, kept.minus(used));
        receivable.put(quote, owed.minus(used));
    }

    private void add(Movement movement, String text, Entry.Builder entry) {
        add(movement.on(), movement.id(), text, entry);
    }

    private void add(LocalDate on, String document, String text, Entry.Builder entry) {
        var postings = entry.done();
        if (!postings.isEmpty()) {
            entries.add(new Entry(on, document, text, postings));
        }
    }
}
