package fairflame.invoice.account;

import fairflame.Refusal;
import fairflame.invoice.Invoice;
import fairflame.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** The account of one quote: its invoices, credit notes and movements. Money settles what it names, then the oldest. */
public final class CustomerAccount {
    private static final Comparator<Invoice> OLDEST_FIRST =
            Comparator.comparing(Invoice::issued).thenComparing(Invoice::number);

    private final CurrencyUnit currency;
    private final List<Invoice> papers;
    private final List<Movement> movements;
    private final Map<String, Money> credited = new LinkedHashMap<>();
    private final Map<String, Money> settled = new LinkedHashMap<>();
    private Money spare;

    /**
     * The account.
     *
     * @param papers invoices and credit notes of one quote
     * @param movements of the same quote
     */
    public CustomerAccount(CurrencyUnit currency, Collection<Invoice> papers, Collection<Movement> movements) {
        this.currency = currency;
        this.papers = papers.stream().sorted(OLDEST_FIRST).toList();
        this.movements = movements.stream()
                .sorted(Comparator.comparing(Movement::on).thenComparing(Movement::id))
                .toList();
        this.spare = Money.zero(currency);
        credit();
        settle();
    }

    private List<Invoice> invoices() {
        return papers.stream()
                .filter(paper -> paper.kind() != Invoice.Kind.CREDIT)
                .toList();
    }

    private void credit() {
        papers.stream()
                .filter(paper -> paper.kind() == Invoice.Kind.CREDIT)
                .forEach(note ->
                        credited.merge(note.corrects(), note.totals().total().negated(), Money::plus));
    }

    private void settle() {
        movements.forEach(movement -> {
            if (movement.invoice().isPresent()) {
                settled.merge(movement.invoice().get(), movement.settles(), Money::plus);
            } else {
                spare = spare.plus(movement.settles());
            }
        });
        // What is paid beyond a named invoice, or was paid before its credit, is the customer's and settles the oldest.
        for (var invoice : invoices()) {
            var over = left(invoice);
            if (over.isNegative()) {
                settled.merge(invoice.number(), over, Money::plus);
                spare = spare.minus(over);
            }
        }
        for (var invoice : invoices()) {
            if (spare.isPositive() && left(invoice).isPositive()) {
                var part = spare.isLessThan(left(invoice)) ? spare : left(invoice);
                settled.merge(invoice.number(), part, Money::plus);
                spare = spare.minus(part);
            }
        }
    }

    private Money left(Invoice invoice) {
        return invoice.totals().total().minus(credited(invoice)).minus(settled(invoice));
    }

    private Money credited(Invoice invoice) {
        return credited.getOrDefault(invoice.number(), Money.zero(currency));
    }

    private Money settled(Invoice invoice) {
        return settled.getOrDefault(invoice.number(), Money.zero(currency));
    }

    /** The invoices with what is left of each, the oldest first; the settled ones too. */
    public List<OpenItem> items() {
        return invoices().stream()
                .map(invoice -> new OpenItem(invoice, credited(invoice), settled(invoice), left(invoice)))
                .toList();
    }

    /** Money of the customer that no invoice has used: a deposit before the work, or a payment after a credit. */
    public Money spare() {
        return spare;
    }

    /** Money that the customer gave and what was written off, less what was paid back. */
    public Money given() {
        return Amounts.sum(currency, movements.stream().map(Movement::settles).toList());
    }

    /** What the customer owes; negative when the shop owes. */
    public Money balance() {
        var charged = Amounts.sum(
                currency, papers.stream().map(paper -> paper.totals().total()).toList());
        return charged.minus(given());
    }

    /** Refuses to give back more than is the customer's. */
    public void refuseRefundOf(Money amount) {
        if (amount.isGreaterThan(spare)) {
            throw Refusal.notAllowed("refund", amount, "at most " + spare + ", the customer's own money");
        }
    }

    /** Refuses to write off more than is open of an invoice. */
    public void refuseWriteOffOf(String number, Money amount) {
        var item = items().stream()
                .filter(candidate -> candidate.invoice().number().equals(number))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("invoice", number, "an invoice of this quote"));
        if (amount.isGreaterThan(item.open())) {
            throw Refusal.notAllowed("write-off", amount, "at most " + item.open() + ", what is open of " + number);
        }
    }

    /** Invoices, credit notes and movements in the order of days, with the balance after each. */
    List<StatementRow> rows() {
        var rows = new ArrayList<StatementRow>();
        papers.forEach(paper -> rows.add(StatementRow.of(paper)));
        movements.forEach(movement -> rows.add(StatementRow.of(movement)));
        rows.sort(Comparator.comparing(StatementRow::on).thenComparing(StatementRow::paper, Comparator.reverseOrder()));
        return rows;
    }

    /** The due day of the oldest invoice still open. */
    public java.util.Optional<LocalDate> oldestDue() {
        return items().stream()
                .filter(item -> item.open().isPositive())
                .map(item -> item.invoice().due())
                .min(Comparator.naturalOrder());
    }
}
