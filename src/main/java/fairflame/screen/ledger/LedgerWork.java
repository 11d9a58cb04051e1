package fairflame.screen.ledger;

import fairflame.agreement.SignedRevision;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.quote.Quote;
import fairflame.visit.VisitPapers;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** What the ledger asks of the use cases. */
public interface LedgerWork {
    /** Visits whose number, name, address or papers hold these words; all for no words. Newest first. */
    List<Entry> entries(String words);

    /** Everything on one visit. */
    File file(String visit);

    /** Makes the invoice of a signed quote; refused when the completion record lacks what the place demands. */
    void invoice(String quote, Completion completion);

    /** Takes a payment; refused above what is due. */
    void pay(String invoice, Money amount, String method, String reference);

    /** Writes the invoice as a paper and gives its place. */
    Path print(Invoice invoice);

    /** What differs from what was signed, in words; none when the seal holds. */
    List<String> verify(String quote);

    /** What has to happen next with a visit. */
    enum Next {
        FINISH,
        STOPPED,
        SIGN,
        EXPIRED,
        INVOICE,
        PAYMENT,
        NOTHING
    }

    /**
     * One visit in the list.
     *
     * @param amount of the quote, the signed choice or what is due, whichever comes last
     */
    record Entry(String visit, String customer, String place, LocalDate on, Next next, Optional<Money> amount) {}

    /**
     * The papers of one visit.
     *
     * @param quote latest revision
     * @param leadsPlaced bypass leads not recorded as removed
     */
    record File(
            String visit,
            Optional<Quote> quote,
            Optional<SignedRevision> signed,
            List<VisitPapers.Bill> bills,
            long leadsPlaced) {
        public File {
            bills = List.copyOf(bills);
        }
    }
}
