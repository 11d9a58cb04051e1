package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.SignedRevision;
import fairflame.document.MoneyIn;
import fairflame.invoice.Account;
import fairflame.invoice.Completion;
import fairflame.invoice.Deposits;
import fairflame.invoice.Invoice;
import fairflame.invoice.InvoiceNumber;
import fairflame.invoice.Issue;
import fairflame.invoice.Payment;
import fairflame.money.Amounts;
import fairflame.store.Receipt;
import fairflame.store.Records;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/** Turns what was signed into an invoice, and money received into a balance. */
public final class Billing {
    private static final String SERIES = "I";

    private final Workplace workplace;
    private final Progress progress;

    public Billing(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, it keeps nothing. */
    public Billing(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** An invoice as it stands now, what is still owed for the whole agreement, and the files written. */
    public record Result(Invoice invoice, Money balance, List<String> files) {
        public Result {
            files = List.copyOf(files);
        }
    }

    /**
     * A deposit that was taken.
     *
     * @param left what is left of the agreed price
     * @param files the receipt
     */
    public record Deposited(Payment payment, Money left, List<String> files) {
        public Deposited {
            files = List.copyOf(files);
        }
    }

    /** A payment, what is left to pay after it, and what its receipt is written from. */
    private record Taken(Payment payment, Money left, MoneyIn money) {}

    /** An invoice with its payments and what is owed on its job. */
    private record Standing(Invoice invoice, Money owed) {
        static Standing of(Records records, String number) {
            var invoice = Billing.invoice(records, number);
            return new Standing(
                    account(records, invoice.quote()).shown(number),
                    Accounts.of(records, invoice.quote(), invoice.currency()).balance());
        }
    }

    /** A payment on an invoice as it stands after it. */
    private record Paid(Taken taken, Standing standing) {}

    /**
     * How an invoice is to be issued.
     *
     * @param supplied day on which the work was done
     * @param dueDays days until payment is due, 0 to 365
     * @param complete whether the work is to be called complete; refused while anything that the place asks is missing
     */
    public record Terms(LocalDate supplied, int dueDays, boolean complete) {
        public Terms {
            if (dueDays < 0 || dueDays > 365) {
                throw Refusal.outOfRange("days until payment is due", dueDays, "0 to 365");
            }
        }
    }

    /** Money that somebody hands over. */
    public record Received(Money amount, String method, String reference, LocalDate on) {}

    /** Bills everything that was agreed on a quote and is not billed yet. */
    public Result invoice(String quote, Completion completion, Terms terms) {
        return billed(records -> {
            var agreed = agreed(records, quote);
            var signed = agreed.signed().quote();
            var earlier = records.invoices().ofQuote(quote);
            JobActuals.refuseUncovered(records, agreed);
            Permits.refuseBill(records, agreed.signed(), terms.supplied(), workplace.today());
            var known = Permits.completion(records, agreed.signed(), leadsRemoved(records, signed.visit(), completion));
            records.completionRecords().put(quote, signed.revision(), known);
            var issued = records.invoices().issue(SERIES, workplace.today().getYear(), number -> {
                var issue = new Issue(
                        InvoiceNumber.parse(number),
                        workplace.today(),
                        terms.supplied(),
                        workplace.today().plusDays(terms.dueDays()));
                var invoicing = workplace.library().invoicing(agreed);
                return terms.complete()
                        ? invoicing.complete(issue, known, earlier)
                        : invoicing.rest(issue, known, earlier);
            });
            VisitStates.move(records, signed.visit(), State.INVOICED);
            return issued;
        });
    }

    /** Stores an invoice and writes its papers, or does neither. */
    Result billed(Function<Records, Invoice> issue) {
        var filed = new Filing(workplace, progress)
                .keep(
                        records -> Standing.of(records, issue.apply(records).number()),
                        standing -> new Papers(workplace, progress).invoice(standing.invoice()));
        return new Result(filed.content().invoice(), filed.content().owed(), filed.files());
    }

    /** Whether a number is that of a quote, in whatever series. */
    public boolean isQuote(String number) {
        return workplace
                .store()
                .reading(records -> records.quotes().latest(number))
                .isPresent();
    }

    /** Takes a payment on an invoice and writes its receipt, the last of the files; more than is due is refused. */
    public Result pay(String number, Received received) {
        var filed = new Filing(workplace, progress).keep(records -> paid(records, number, received), this::papers);
        var now = filed.content().standing();
        return new Result(now.invoice(), now.owed(), filed.files());
    }

    private Map<String, byte[]> papers(Paid paid) {
        var papers = new Papers(workplace, progress);
        var files = new LinkedHashMap<>(papers.invoice(paid.standing().invoice()));
        files.putAll(receipt(paid.taken()));
        return files;
    }

    private Paid paid(Records records, String number, Received received) {
        var invoice = invoice(records, number);
        var account = account(records, invoice.quote());
        var payment = payment(received, number, account.payments().size() + 1, false);
        var after = account.receive(payment, workplace.today());
        refuseMoreThanOwed(records, invoice, payment.amount());
        records.payments().add(new Receipt(invoice.quote(), Optional.of(number), payment));
        if (after.balance().isZero()) {
            records.quotes()
                    .find(invoice.quote(), invoice.revision())
                    .ifPresent(quote -> VisitStates.move(records, quote.visit(), State.PAID));
        }
        var owed = Accounts.of(records, invoice.quote(), invoice.currency()).balance();
        return new Paid(
                taken(records, signed(records, invoice), Optional.of(number), payment, owed),
                Standing.of(records, number));
    }

    /** What was written off or paid back counts too. */
    private static void refuseMoreThanOwed(Records records, Invoice invoice, Money amount) {
        var owed = Accounts.of(records, invoice.quote(), invoice.currency()).balance();
        if (amount.isGreaterThan(owed)) {
            throw Refusal.outOfRange("payment", amount, "up to " + owed + ", what is due");
        }
    }

    /** Takes a deposit on a signed quote, up to what was agreed, and writes its receipt. */
    public Deposited deposit(String quote, Received received) {
        var filed = new Filing(workplace, progress)
                .keep(
                        records -> {
                            var agreed = agreed(records, quote);
                            var signed = agreed.signed();
                            var taken = records.payments().ofQuote(quote).stream()
                                    .map(Receipt::payment)
                                    .toList();
                            var payment = payment(received, quote, taken.size() + 1, true);
                            Deposits.receive(signed, taken, payment, workplace.today());
                            records.payments().add(new Receipt(quote, Optional.empty(), payment));
                            var given = Accounts.of(
                                            records, quote, signed.quote().currency())
                                    .given();
                            var left = agreed.totals().total().minus(given);
                            return taken(records, signed, Optional.empty(), payment, left);
                        },
                        this::receipt);
        return new Deposited(filed.content().payment(), filed.content().left(), filed.files());
    }

    private static Taken taken(
            Records records, SignedRevision signed, Optional<String> invoice, Payment payment, Money left) {
        // Stored by day and id: the one that was taken now need not be the last of them.
        var payments = new ArrayList<>(records.payments().ofQuote(signed.quote().number()).stream()
                .map(Receipt::payment)
                .filter(each -> !each.id().equals(payment.id()))
                .toList());
        payments.add(payment);
        var all = Amounts.sum(
                left.getCurrencyUnit(), payments.stream().map(Payment::amount).toList());
        return new Taken(payment, left, new MoneyIn(signed, invoice, payments, left.plus(all)));
    }

    private static SignedRevision signed(Records records, Invoice invoice) {
        return records.agreements()
                .find(invoice.quote(), invoice.revision())
                .orElseThrow(() -> Refusal.unknown(
                        "signed quote", invoice.quote(), "the signed quote of the invoice in this folder"));
    }

    private Map<String, byte[]> receipt(Taken taken) {
        return new Papers(workplace, progress)
                .receipt(taken.money(), taken.payment().id());
    }

    /** An invoice as it stands now, its papers written afresh. */
    public Result shown(String number) {
        var now = workplace.store().reading(records -> Standing.of(records, number));
        var files = new Papers(workplace, progress).invoice(now.invoice());
        workplace.folder().write(files);
        return new Result(now.invoice(), now.owed(), List.copyOf(files.keySet()));
    }

    private static Payment payment(Received received, String about, int count, boolean deposit) {
        return new Payment(
                "P-" + about + "-" + count,
                received.on(),
                received.amount(),
                received.method(),
                received.reference(),
                deposit);
    }

    private static Agreed agreed(Records records, String quote) {
        var signed = records.agreements()
                .latest(quote)
                .orElseThrow(() -> records.quotes().latest(quote).isPresent()
                        ? Refusal.notAllowed("invoice for quote " + quote, "not signed", "a signed quote")
                        : Refusal.unknown("quote", quote, "the number of a quote in this folder"));
        return new Agreed(
                signed, records.changeOrders().of(quote, signed.quote().revision()));
    }

    private static Invoice invoice(Records records, String number) {
        return records.invoices()
                .find(number)
                .orElseThrow(() -> Refusal.unknown("invoice", number, "the number of an invoice in this folder"));
    }

    private static Account account(Records records, String quote) {
        return new Account(
                records.invoices().ofQuote(quote),
                records.payments().ofQuote(quote).stream().map(Receipt::payment).toList());
    }

    /** A bypass lead that the visit still has out counts, whatever the record of the work says. */
    private Completion leadsRemoved(Records records, String visit, Completion stated) {
        var out = records.visits()
                .find(visit)
                .map(stored ->
                        workplace.library().visits().read(stored.text()).file().leadsStillPlaced())
                .orElse(0L);
        return new Completion(
                stated.permitNumber(),
                stated.fitterName(),
                stated.fitterLicence(),
                stated.tests(),
                stated.pressureTest(),
                stated.leadsRemoved() && out == 0);
    }
}
