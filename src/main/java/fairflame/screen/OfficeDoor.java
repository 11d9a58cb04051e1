package fairflame.screen;

import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.Statement;
import fairflame.invoice.order.OrderSheet;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeDecision;
import fairflame.screen.office.OfficeWork;
import fairflame.visit.DataKeeping;
import fairflame.visit.Deliveries;
import fairflame.visit.DueVisits;
import fairflame.visit.Handoff;
import fairflame.visit.JobHours;
import fairflame.visit.Ledger;
import fairflame.visit.MoneyHeld;
import fairflame.visit.Ordering;
import fairflame.visit.Permits;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The office pages' part of the door to a shop at work. */
final class OfficeDoor implements OfficeWork {
    private final Workplace workplace;

    OfficeDoor(Workplace workplace) {
        this.workplace = workplace;
    }

    private Path written(String name) {
        return papers().resolve(name);
    }

    @Override
    public LocalDate today() {
        return workplace.today();
    }

    @Override
    public Path papers() {
        return workplace.papers();
    }

    @Override
    public List<DueVisits.Row> due() {
        return new DueVisits(workplace).all();
    }

    @Override
    public Path calendar() {
        return written(new Permits(workplace).calendar());
    }

    @Override
    public List<OrderSheet> toOrder() {
        return new Ordering(workplace).sheets();
    }

    @Override
    public List<Deliveries.Standing> orders() {
        return new Deliveries(workplace).orders();
    }

    @Override
    public List<Deliveries.Load> truck() {
        return new Deliveries(workplace).truck();
    }

    @Override
    public List<Path> order(String supplier, Set<String> parts) {
        return new Ordering(workplace)
                .place(supplier, parts).files().stream().map(this::written).toList();
    }

    @Override
    public void mark(String order, String part, boolean here) {
        new Deliveries(workplace).mark(order, part, here);
    }

    @Override
    public Ageing ageing() {
        return new Ledger(workplace).ageing();
    }

    @Override
    public List<MoneyHeld.Held> held() {
        return new MoneyHeld(workplace).held();
    }

    @Override
    public List<MoneyHeld.GivenUp> givenUp() {
        return new MoneyHeld(workplace).givenUp();
    }

    @Override
    public List<String> customers() {
        return new MoneyHeld(workplace).customers();
    }

    @Override
    public String visitOf(String quote) {
        return new MoneyHeld(workplace).visit(quote);
    }

    @Override
    public Path statement(String customer, Statement.Span span) {
        return written(new Ledger(workplace).statement(customer, span).files().get(0));
    }

    @Override
    public String laptop() {
        return new Handoff(workplace).laptop().orElse("");
    }

    @Override
    public void name(String laptop, String series) {
        new Handoff(workplace).name(laptop, series);
    }

    @Override
    public Path export() {
        return written(new Handoff(workplace).export());
    }

    @Override
    public Handoff.Taken take(Path file, Progress progress) {
        return new Handoff(workplace).take(file, progress);
    }

    @Override
    public List<Handoff.Conflict> conflicts() {
        return new Handoff(workplace).conflicts();
    }

    @Override
    public void settle(int number, String words) {
        new Handoff(workplace).settle(number, words);
    }

    @Override
    public ShopReport figures(Statement.Span span) {
        return new Ledger(workplace).figures(span);
    }

    @Override
    public Map<String, String> names() {
        return new Ledger(workplace).names();
    }

    @Override
    public Path report(Statement.Span span) {
        return written(new Ledger(workplace).report(span).files().get(0));
    }

    @Override
    public List<TimeDecision> decisions() {
        return new JobHours(workplace).decisions();
    }

    @Override
    public TimeDecision decide(String task, BigDecimal factor, String reason) {
        return new JobHours(workplace).decide(task, factor, reason);
    }

    @Override
    public Journal journal(Statement.Span span) {
        var journal = new Ledger(workplace).journal(span);
        return new Journal(written(journal.files().get(0)), journal.content().size());
    }

    @Override
    public List<String> invoices() {
        return new MoneyHeld(workplace).papers();
    }

    @Override
    public Path electronic(String number) {
        return written(new Ledger(workplace).electronic(number));
    }

    @Override
    public long exportAll(Path file, Progress progress) {
        return DataKeeping.export(workplace, file, progress);
    }

    @Override
    public long importAll(Path file, Path folder, Progress progress) {
        return DataKeeping.importAll(file, folder, progress);
    }

    @Override
    public void backup(Path copy, Progress progress) {
        DataKeeping.backup(workplace, copy, progress);
    }

    @Override
    public void restore(Path copy, Path folder, Progress progress) {
        DataKeeping.restore(copy, folder, progress);
    }
}
