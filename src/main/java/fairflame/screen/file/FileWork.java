package fairflame.screen.file;

import fairflame.agreement.Change;
import fairflame.agreement.ChangeDraft;
import fairflame.agreement.SignedRevision;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.PermitStep;
import fairflame.visit.Progress;
import fairflame.visit.Repricing;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * What the file of one visit asks of the use cases. Every act may be refused; then nothing is done. What makes papers is
 * told who looks on, and does nothing either when it is ended.
 */
public interface FileWork {
    LocalDate today();

    /** Name of the person at work, as it stands in the journal. */
    String who();

    void actual(String quote, ActualEntry entry);

    void permit(String quote, PermitStep step);

    void gasWork(String quote, GasWork work);

    void waive(String quote, String statement);

    void book(String quote, LocalDate day, String crew);

    /** Takes a deposit; name of the receipt's file. */
    String deposit(String quote, Received received, Progress progress);

    /** Bills everything that is not billed yet, as complete work. */
    void invoice(String quote, Completion completion, LocalDate supplied, Progress progress);

    void part(String quote, Map<String, BigDecimal> done, LocalDate supplied, Progress progress);

    /** Takes a payment on an invoice; name of the receipt's file. */
    String pay(String invoice, Received received, Progress progress);

    /** Takes an invoice back; everything that is left of it for no quantities. */
    void credit(String invoice, Map<String, BigDecimal> back, String reason, Progress progress);

    void refund(String quote, Received paidBack, String reason);

    void writeOff(String invoice, Money amount, String reason);

    ChangeDraft draft(String quote, Change change);

    /** What the customer agrees to: the work for its new total, then signing on a screen. */
    List<String> consent(String quote, ChangeDraft draft);

    void sign(String quote, Change change, Act act);

    /** What an unsigned quote would come to today; nothing when it is the same. */
    List<Repricing.Difference> differences(String quote);

    /** Makes a new revision at today's prices. */
    void reprice(String quote, Progress progress);

    /** Writes an invoice or credit note as paper and gives its place. */
    Path paper(Invoice invoice, Progress progress);

    /** Writes the signed quote as paper and gives its place. */
    Path signedPaper(SignedRevision signed, Progress progress);

    /** Money that changes hands. */
    record Received(Money amount, String method, String reference) {}

    /**
     * A signature on the screen.
     *
     * @param strokes x,y pairs in thousandths of the pad's width
     */
    record Act(String name, String role, List<List<Integer>> strokes) {
        public Act {
            strokes = strokes.stream().map(List::copyOf).toList();
        }
    }
}
