package fairflame.screen;

import fairflame.agreement.Change;
import fairflame.agreement.ChangeDraft;
import fairflame.agreement.SignedRevision;
import fairflame.agreement.SigningAct;
import fairflame.invoice.Completion;
import fairflame.invoice.Invoice;
import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.permit.GasWork;
import fairflame.invoice.permit.PermitStep;
import fairflame.screen.file.FileWork;
import fairflame.visit.Billing;
import fairflame.visit.Conversion;
import fairflame.visit.CustomerCopy;
import fairflame.visit.JobActuals;
import fairflame.visit.Ledger;
import fairflame.visit.Permits;
import fairflame.visit.Progress;
import fairflame.visit.Repricing;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/** One visit's file: its part of the door to a shop at work. */
final class FileDoor implements FileWork {
    private static final int DUE_DAYS = 14;

    private final Workplace workplace;

    FileDoor(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public LocalDate today() {
        return workplace.today();
    }

    @Override
    public String who() {
        return workplace.who();
    }

    @Override
    public void actual(String quote, ActualEntry entry) {
        new JobActuals(workplace).enter(quote, entry);
    }

    @Override
    public void permit(String quote, PermitStep step) {
        new Permits(workplace).step(quote, step);
    }

    @Override
    public void gasWork(String quote, GasWork work) {
        new Permits(workplace).gasWork(quote, work);
    }

    @Override
    public void waive(String quote, String statement) {
        new Permits(workplace).waive(quote, workplace.today(), statement);
    }

    @Override
    public void book(String quote, LocalDate day, String crew) {
        new Permits(workplace).book(quote, day, crew);
    }

    @Override
    public String deposit(String quote, Received received, Progress progress) {
        return receipt(
                new Billing(workplace, progress).deposit(quote, money(received)).files());
    }

    private Billing.Received money(Received received) {
        return new Billing.Received(received.amount(), received.method(), received.reference(), workplace.today());
    }

    @Override
    public void invoice(String quote, Completion completion, LocalDate supplied, Progress progress) {
        new Billing(workplace, progress).invoice(quote, completion, new Billing.Terms(supplied, DUE_DAYS, true));
    }

    @Override
    public void part(String quote, Map<String, BigDecimal> done, LocalDate supplied, Progress progress) {
        new Conversion(workplace, progress).part(quote, done, new Billing.Terms(supplied, DUE_DAYS, false));
    }

    @Override
    public String pay(String invoice, Received received, Progress progress) {
        return receipt(
                new Billing(workplace, progress).pay(invoice, money(received)).files());
    }

    /** The receipt is the last of the files. */
    private static String receipt(List<String> files) {
        return files.get(files.size() - 1);
    }

    @Override
    public void credit(String invoice, Map<String, BigDecimal> back, String reason, Progress progress) {
        new Conversion(workplace, progress).credit(invoice, back, reason);
    }

    @Override
    public void refund(String quote, Received paidBack, String reason) {
        new Ledger(workplace).refund(quote, paidBack.amount(), paidBack.method(), reason);
    }

    @Override
    public void writeOff(String invoice, Money amount, String reason) {
        new Ledger(workplace).writeOff(invoice, amount, reason);
    }

    @Override
    public ChangeDraft draft(String quote, Change change) {
        return new Conversion(workplace).draft(quote, change);
    }

    @Override
    public List<String> consent(String quote, ChangeDraft draft) {
        return new Conversion(workplace).consent(quote, draft);
    }

    @Override
    public void sign(String quote, Change change, Act act) {
        new Conversion(workplace)
                .sign(
                        quote,
                        change,
                        new SigningAct(
                                act.name(),
                                act.role(),
                                workplace.now(),
                                Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                                Map.of(),
                                act.strokes(),
                                workplace.who()));
    }

    @Override
    public List<Repricing.Difference> differences(String quote) {
        return new Repricing(workplace).differences(quote);
    }

    @Override
    public void reprice(String quote, Progress progress) {
        new Repricing(workplace, progress).make(quote);
    }

    @Override
    public Path paper(Invoice invoice, Progress progress) {
        if (invoice.kind() != Invoice.Kind.CREDIT) {
            new Billing(workplace, progress).shown(invoice.number());
        }
        return workplace.papers().resolve(invoice.number() + ".pdf");
    }

    @Override
    public Path signedPaper(SignedRevision signed, Progress progress) {
        return new CustomerCopy(workplace, signed, progress).paper(workplace.papers());
    }
}
