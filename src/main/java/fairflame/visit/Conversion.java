package fairflame.visit;

import fairflame.Refusal;
import fairflame.agreement.Agreed;
import fairflame.agreement.Change;
import fairflame.agreement.ChangeDraft;
import fairflame.agreement.ChangeOrder;
import fairflame.agreement.Changing;
import fairflame.agreement.SigningAct;
import fairflame.invoice.Completion;
import fairflame.invoice.Crediting;
import fairflame.invoice.Invoice;
import fairflame.invoice.InvoiceNumber;
import fairflame.invoice.Issue;
import fairflame.invoice.actual.ActualWork;
import fairflame.store.Records;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** From signed work to its papers where the straight way does not do: parts, changes, credits. */
public final class Conversion {
    private static final String INVOICES = "I";
    private static final String CREDITS = "C";

    private final Workplace workplace;
    private final Progress progress;

    public Conversion(Workplace workplace) {
        this(workplace, Progress.UNWATCHED);
    }

    /** As it is watched: ended before all papers are made, it keeps nothing. */
    public Conversion(Workplace workplace, Progress progress) {
        this.workplace = workplace;
        this.progress = progress;
    }

    /** A credit note and the files written. */
    public record Credited(Invoice note, List<String> files) {
        public Credited {
            files = List.copyOf(files);
        }
    }

    /** What was done against what was signed. Nothing is stored. */
    public ActualWork compare(String quote, Map<String, BigDecimal> quantities, Map<String, Money> outside) {
        return workplace.store().reading(records -> ActualWork.of(Signed.of(records, quote), quantities, outside));
    }

    /**
     * Bills a part of signed work.
     *
     * @param done quantity done now, by line id
     */
    public Billing.Result part(String quote, Map<String, BigDecimal> done, Billing.Terms terms) {
        return new Billing(workplace, progress).billed(records -> {
            var agreed = Signed.of(records, quote);
            var completion = completion(records, quote, agreed.signed().quote().revision());
            var earlier = records.invoices().ofQuote(quote);
            JobActuals.refuseLines(records, agreed, done.keySet());
            Permits.refuseBill(records, agreed.signed(), terms.supplied(), workplace.today());
            return records.invoices()
                    .issue(
                            INVOICES,
                            workplace.today().getYear(),
                            each -> workplace
                                    .library()
                                    .invoicing(agreed)
                                    .part(issue(each, terms), completion, earlier, done));
        });
    }

    private static Completion completion(Records records, String quote, int revision) {
        return records.completionRecords().latest(quote, revision).orElse(CompletionFile.NOTHING);
    }

    private Issue issue(String number, Billing.Terms terms) {
        return new Issue(
                InvoiceNumber.parse(number),
                workplace.today(),
                terms.supplied(),
                workplace.today().plusDays(terms.dueDays()));
    }

    /**
     * Takes an invoice back, in whole or in part.
     *
     * @param back quantity taken back by line id; empty for everything that is left
     */
    public Credited credit(String invoice, Map<String, BigDecimal> back, String reason) {
        var filed = new Filing(workplace, progress)
                .keep(records -> note(records, invoice, back, reason), new Papers(workplace, progress)::invoice);
        return new Credited(filed.content(), filed.files());
    }

    private Invoice note(Records records, String invoice, Map<String, BigDecimal> back, String reason) {
        var found = records.invoices()
                .find(invoice)
                .orElseThrow(() -> Refusal.unknown("invoice", invoice, "the number of an invoice in this folder"));
        var earlier = records.invoices().ofQuote(found.quote()).stream()
                .filter(paper -> paper.corrects().equals(invoice))
                .toList();
        return records.invoices().issue(CREDITS, workplace.today().getYear(), each -> {
            var today = workplace.today();
            var issue = new Issue(InvoiceNumber.parse(each), today, found.supplied(), today);
            return back.isEmpty()
                    ? Crediting.full(issue, found, earlier, reason)
                    : Crediting.partial(issue, found, earlier, back, reason);
        });
    }

    /** What the customer would sign for. Nothing is stored. */
    public ChangeDraft draft(String quote, Change change) {
        return workplace.store().reading(records -> {
            var agreed = Signed.of(records, quote);
            return changing(agreed).draft(agreed, change);
        });
    }

    /** Signs, seals and stores a change. */
    public ChangeOrder sign(String quote, Change change, SigningAct act) {
        return workplace.store().inTransaction(workplace.by(), records -> {
            var agreed = Signed.of(records, quote);
            var changing = changing(agreed);
            var order = changing.sign(
                    agreed, changing.draft(agreed, change), act, records.chain().last());
            records.changeOrders().add(order);
            return order;
        });
    }

    /** What the customer agrees to by signing a change, in the language of the quote: to be shown before the act. */
    public List<String> consent(String quote, ChangeDraft draft) {
        var signed = workplace
                .store()
                .reading(records -> Signed.of(records, quote).signed().quote());
        var words = workplace.library().in(signed).consent();
        return List.of(words.authoriseChange(signed, draft.after().total()), words.electronic(signed));
    }

    private Changing changing(Agreed agreed) {
        return new Changing(workplace.library().in(agreed.signed().quote()).consent());
    }
}
