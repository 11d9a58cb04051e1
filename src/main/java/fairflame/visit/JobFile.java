package fairflame.visit;

import fairflame.agreement.Agreed;
import fairflame.agreement.CancelRight;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.WarrantyTerm;
import fairflame.invoice.account.CustomerAccount;
import fairflame.invoice.account.Movement;
import fairflame.invoice.permit.Booking;
import fairflame.invoice.permit.CancelGate;
import fairflame.invoice.permit.Waiver;
import fairflame.quote.Line;
import fairflame.store.Receipt;
import fairflame.store.Records;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Everything the office has on one signed job.
 *
 * @param papers invoices and credit notes in the order of issue
 * @param movements payments, refunds and write-offs
 * @param deposit what may still be taken as a deposit
 * @param warranty what is promised, once the work was billed as complete
 */
public record JobFile(
        Agreed agreed,
        JobActuals.View actuals,
        Permits.Entry permit,
        Optional<Booking> booking,
        Optional<Waiver> waiver,
        List<Invoice> papers,
        CustomerAccount account,
        List<Movement> movements,
        Money deposit,
        List<WarrantyTerm> warranty,
        Completion completion) {
    public JobFile {
        papers = List.copyOf(papers);
        movements = List.copyOf(movements);
        warranty = List.copyOf(warranty);
    }

    /** The file of a signed quote. */
    public static JobFile of(Workplace workplace, String quote) {
        return workplace.store().reading(records -> of(records, workplace, Signed.of(records, quote)));
    }

    static JobFile of(Records records, Workplace workplace, Agreed agreed) {
        var signed = agreed.signed();
        var quote = signed.quote();
        var key = Signed.key(signed);
        var papers = records.invoices().ofQuote(quote.number());
        return new JobFile(
                agreed,
                JobActuals.view(records, agreed),
                new Permits(workplace).entry(records, agreed),
                records.registers().bookings().find(key),
                records.registers().waivers().find(key),
                papers,
                Accounts.of(records, quote.number(), quote.currency()),
                Accounts.movements(records).stream()
                        .filter(movement -> movement.quote().equals(quote.number()))
                        .toList(),
                depositLeft(records, agreed),
                completed(papers)
                        .map(day -> WarrantyTerm.of(agreed, workplace.library().shop(), day))
                        .orElse(List.of()),
                records.completionRecords()
                        .latest(quote.number(), quote.revision())
                        .orElse(CompletionFile.NOTHING));
    }

    private static Money depositLeft(Records records, Agreed agreed) {
        var signed = agreed.signed();
        var taken = records.payments().ofQuote(signed.quote().number()).stream()
                .map(Receipt::payment)
                .map(payment -> payment.amount())
                .reduce(Money.zero(signed.quote().currency()), Money::plus);
        var left = signed.taken().deposit().minus(taken);
        return left.isNegative() ? Money.zero(signed.quote().currency()) : left;
    }

    private static Optional<LocalDate> completed(List<Invoice> papers) {
        return papers.stream()
                .filter(paper -> paper.kind() != Invoice.Kind.CREDIT && paper.complete())
                .map(Invoice::supplied)
                .reduce((one, other) -> other);
    }

    /** Number of the signed quote. */
    public String quote() {
        return agreed.signed().quote().number();
    }

    /** Day on which the work was completed, by the invoice that says so. */
    public Optional<LocalDate> completed() {
        return completed(papers);
    }

    /** The customer's right to cancel, whether it still runs or not. */
    public Optional<CancelRight> right() {
        return CancelRight.of(agreed.signed());
    }

    /** Whether work is held back on a day because the customer may still cancel. */
    public boolean heldBack(LocalDate day) {
        return !agreed.signed().taken().work().isEmpty()
                && CancelGate.closed(agreed.signed(), day, waiver).isPresent();
    }

    /** Quantity billed of each line, credits taken off, by id. */
    public Map<String, BigDecimal> billed() {
        var billed = new HashMap<String, BigDecimal>();
        papers.forEach(
                paper -> paper.lines().forEach(line -> billed.merge(line.id(), line.quantity(), BigDecimal::add)));
        return billed;
    }

    /** Amount billed of each line before tax, credits taken off, by id. */
    public Map<String, Money> billedAmounts() {
        var billed = new HashMap<String, Money>();
        papers.forEach(paper -> paper.lines().forEach(line -> billed.merge(line.id(), line.net(), Money::plus)));
        return billed;
    }

    /** All invoices less all credit notes. */
    public Money billedTotal() {
        return papers.stream()
                .map(paper -> paper.totals().total())
                .reduce(Money.zero(agreed.signed().quote().currency()), Money::plus);
    }

    /** Agreed lines that are not billed to the end; those credited back count as open again. */
    public List<Line> open() {
        var billed = billed();
        return agreed.lines().stream()
                .filter(line -> line.quantity().compareTo(billed.getOrDefault(line.id(), BigDecimal.ZERO)) != 0)
                .toList();
    }

    /** Whether there are bills and nothing of the agreement waits for one. */
    public boolean isBilled() {
        return !papers.isEmpty()
                && open().stream().allMatch(line -> line.quantity().signum() == 0 || credited(line));
    }

    /** Whether a line was credited back: then it is not waiting to be billed. */
    public boolean credited(Line line) {
        return papers.stream()
                .filter(paper -> paper.kind() == Invoice.Kind.CREDIT)
                .flatMap(paper -> paper.lines().stream())
                .anyMatch(back -> back.id().equals(line.id()));
    }
}
