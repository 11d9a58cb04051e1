package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.Per;
import fairflame.catalog.Shop;
import fairflame.catalog.Task;
import fairflame.invoice.report.ActualHours;
import fairflame.invoice.report.TimeComparison;
import fairflame.invoice.report.TimeDecision;
import fairflame.quote.LineKind;
import fairflame.store.Records;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Hours worked against standard times. A standard time changes only when a person says so. */
public final class JobHours {
    private static final String HOURS = "h";

    private final Workplace workplace;

    public JobHours(Workplace workplace) {
        this.workplace = workplace;
    }

    /**
     * Records the own time that a task of a signed quote took.
     *
     * @param condition key of the shop's time conditions, empty for none
     * @param standard hours by the standard for the same counts; without it the task's time for one piece
     */
    public ActualHours record(
            String quote, String task, String condition, Optional<BigDecimal> standard, BigDecimal actual) {
        var known = workplace.folderShop().task(task);
        var rates = workplace.library().shop().rates();
        if (!condition.isEmpty()
                && !rates.ownFactors().containsKey(condition)
                && !rates.ownHours().containsKey(condition)) {
            throw Refusal.unknown(
                    "condition",
                    condition,
                    rates.ownFactors().keySet() + ", " + rates.ownHours().keySet());
        }
        var asked = standard.orElseGet(() -> onePiece(known));
        var hours = new ActualHours(quote, workplace.today(), task, condition, asked, actual);
        workplace.store().change(workplace.by(), records -> {
            var signed = Signed.of(records, quote).signed();
            if (signed.taken().work().stream().noneMatch(work -> work.task().equals(task))) {
                throw Refusal.notAllowed(
                        "task",
                        task,
                        signed.taken().work().stream().map(work -> work.task()).toList() + ", the signed tasks");
            }
            records.registers().hours().put(quote + " " + task + " " + condition, hours);
        });
        return hours;
    }

    /** All jobs against their standard times, by task and condition. */
    public List<TimeComparison> comparisons() {
        return TimeComparison.of(hours());
    }

    /** Jobs far outside the others of their task, for a second look. */
    public List<ActualHours> outliers() {
        return TimeComparison.outliers(hours());
    }

    /** What was decided for a task, the last first. */
    public List<TimeDecision> decisions(String task) {
        var all = new java.util.ArrayList<TimeDecision>();
        workplace
                .store()
                .reading(records -> records.registers().timeDecisions().history(task))
                .forEach(decision -> all.add(0, decision));
        return all;
    }

    /** The standard time of a task for one job and one piece as it stands in the shop's folder, hours. */
    public BigDecimal folderTime(String task) {
        return onePiece(workplace.folderShop().task(task));
    }

    private List<ActualHours> hours() {
        var shop = workplace.folderShop();
        return workplace.store().reading(records -> known(records, shop));
    }

    /** Hours recorded by themselves, and those told with the work of a job that were not. */
    static List<ActualHours> known(Records records, Shop shop) {
        var all = new ArrayList<>(records.registers().hours().all());
        for (var job : records.registers().actuals().all()) {
            job.tasks().forEach((task, hours) -> {
                var recorded = all.stream()
                        .anyMatch(one ->
                                one.quote().equals(job.quote()) && one.task().equals(task));
                if (!recorded) {
                    shop.tasks().stream()
                            .filter(known -> known.id().equals(task))
                            .map(JobHours::onePiece)
                            .filter(standard -> standard.signum() > 0)
                            .forEach(standard -> all.add(
                                    new ActualHours(job.quote(), job.at().toLocalDate(), task, "", standard, hours)));
                }
            });
        }
        return List.copyOf(all);
    }

    private static BigDecimal onePiece(Task task) {
        return task.times().stream()
                .filter(time -> time.per() == Per.JOB || time.per() == Per.PIECE)
                .map(time -> time.hours())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * Labour of a signed line beside what was told of it.
     *
     * @param signed hours as signed: own time and access by the standard, rounded up once
     */
    public record JobLabour(String quote, String line, String description, BigDecimal signed, BigDecimal actual) {}

    /** Hours of every signed labour line of which somebody told, by number of the quote. */
    public List<JobLabour> labour() {
        return workplace
                .store()
                .reading(records -> Signed.all(records).stream()
                        .flatMap(agreed -> JobActuals.view(records, agreed).work().rows().stream()
                                .filter(row -> row.told()
                                        && row.line().kind() == LineKind.LABOUR
                                        && row.line().unit().equals(HOURS))
                                .map(row -> new JobLabour(
                                        agreed.signed().quote().number(),
                                        row.line().id(),
                                        row.line().description(),
                                        row.line().quantity(),
                                        row.actual())))
                        .toList());
    }

    /** Every standard time that a person changed, with who and when. */
    public List<TimeDecision> decisions() {
        return workplace
                .store()
                .reading(records -> records.registers().timeDecisions().all());
    }

    /**
     * A person changes the standard times of a task from now on; quotes made before keep theirs.
     *
     * @param factor on the times in the shop's folder
     */
    public TimeDecision decide(String task, BigDecimal factor, String reason) {
        workplace.folderShop().task(task);
        var decision = new TimeDecision(task, factor, workplace.today(), workplace.who(), reason);
        workplace
                .store()
                .change(
                        workplace.by(),
                        records -> records.registers().timeDecisions().put(task, decision));
        workplace.renew();
        return decision;
    }
}
