package fairflame.screen.ledger;

import fairflame.agreement.SignedRevision;
import fairflame.quote.Quote;
import fairflame.screen.file.FileWork;
import fairflame.visit.JobFile;
import fairflame.visit.NextStep;
import fairflame.visit.VisitPapers;
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

    /** What differs from what was signed, in words; none when the seal holds. */
    List<String> verify(String quote);

    /** What can be done with the file of one visit. */
    FileWork papers();

    /**
     * One visit in the list.
     *
     * @param amount of the quote, the signed choice or what is due, whichever comes last
     */
    record Entry(String visit, String customer, String place, LocalDate on, NextStep next, Optional<Money> amount) {}

    /**
     * The papers of one visit.
     *
     * @param quote latest revision
     * @param job everything on the signed job
     * @param leadsPlaced bypass leads not recorded as removed
     */
    record File(
            String visit,
            Optional<Quote> quote,
            Optional<SignedRevision> signed,
            List<VisitPapers.Bill> bills,
            Optional<JobFile> job,
            long leadsPlaced) {
        public File {
            bills = List.copyOf(bills);
        }
    }
}
