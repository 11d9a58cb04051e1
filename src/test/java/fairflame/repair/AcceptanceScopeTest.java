package fairflame.repair;

import static fairflame.repair.Visits.cause;
import static fairflame.repair.Visits.file;
import static fairflame.repair.Visits.ohms;
import static fairflame.repair.Visits.open;
import static fairflame.repair.Visits.settled;
import static fairflame.repair.Visits.withPipe;
import static fairflame.repair.Visits.word;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.gas.Reconciliation;
import fairflame.quantity.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Scopes of acceptance cases, all invented: tasks, hours before rounding, tests, trades and notes. */
class AcceptanceScopeTest {
    private final Shop shop = SampleFolder.shop();
    private final RepairInputs larkwell = RepairInputs.in(shop.jurisdiction("larkwell"));

    @Test
    void twoWetSwitchesAreReplacedTogetherAndOpenedOnce() {
        var file = file(
                ohms("leak-high-limit", "22 kilohm", "cold"),
                ohms("leak-outlet", "31 kilohm", "cold"),
                ohms("contact-high-limit", "6 ohm"),
                ohms("contact-outlet", "4 ohm"));
        var plan =
                ScopeBuilder.plan(settled(cause("LD01", "high-limit-switch", "outlet-switch")), file, shop, larkwell);

        var both = plan.scopes().get(0);
        assertThat(both.id()).isEqualTo("both");
        assertThat(both.suggested()).isTrue();
        assertThat(both.leavesUnfixed()).isEmpty();
        assertThat(ids(both)).containsExactly("R03");
        assertThat(own(both)).isEqualByComparingTo("0.60");
        assertThat(hours(both)).isEqualByComparingTo("1.35");
        assertThat(both.tests()).containsExactly("B", "D", "E", "H");
        assertThat(notes(both)).containsExactly("N-HOT", "N-NOBYPASS", "N-WATER", "N-WATERSRC");
        assertThat(trades(both)).containsExactly(Trade.TECHNICIAN);
        assertThat(parts(both))
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "SW-01", new BigDecimal("1"), "SW-03", new BigDecimal("1"), "SE-01", new BigDecimal("2")));
        assertThat(plan.reasons()).anyMatch(reason -> reason.contains("By rule both are replaced"));
    }

    @Test
    void oneOfTwoWetSwitchesIsShownWithWhatItLeaves() {
        var file = file(ohms("leak-high-limit", "22 kilohm", "cold"), ohms("leak-outlet", "31 kilohm", "cold"));
        var plan =
                ScopeBuilder.plan(settled(cause("LD01", "high-limit-switch", "outlet-switch")), file, shop, larkwell);

        var one = plan.scopes().get(1);
        assertThat(one.id()).isEqualTo("one");
        assertThat(one.suggested()).isFalse();
        assertThat(hours(one)).isEqualByComparingTo("1.05");
        assertThat(parts(one)).containsOnlyKeys("SW-01", "SE-01");
        assertThat(one.extraNotes()).contains("N-SINGLE");
        assertThat(one.leavesUnfixed()).contains("stays off until it is replaced");
    }

    @Test
    void aShortGasLineIsEnlargedToTheComputedSize() {
        var file = withPipe(file(), Reconciliation.Verdict.EXPLAINS);
        var plan = ScopeBuilder.plan(settled(cause("LD03")), file, shop, larkwell.withPipes(List.of(largerLine())));

        assertThat(plan.scopes()).hasSize(1);
        var line = plan.scopes().get(0);
        assertThat(line.id()).isEqualTo("larger-line");
        assertThat(ids(line)).containsExactly("R18");
        assertThat(own(line)).isEqualByComparingTo("12.18");
        assertThat(hours(line)).isEqualByComparingTo("13.68");
        assertThat(line.tests()).containsExactly("A", "P", "C", "G", "K");
        assertThat(notes(line)).contains("N-TEST", "N-UTIL", "N-CO");
        assertThat(trades(line)).containsExactly(Trade.GAS_FITTER);
        assertThat(line.tasks().get(0).task().regulatedGas()).isTrue();
        assertThat(line.tasks().get(0).task().permitClass()).isEqualTo("gas-piping");
        // Pipe by the foot, fittings, hangers, cock, trap, union and a sealant that is listed for gas.
        assertThat(parts(line))
                .containsEntry("GP-04", new BigDecimal("84"))
                .containsEntry("GE9-04", new BigDecimal("8"))
                .containsEntry("GC-04", new BigDecimal("6"))
                .containsEntry("GH-04", new BigDecimal("11"))
                .containsKeys("GV-04", "GS-04", "GU-04", "SE-02")
                .doesNotContainKey("SE-01");
    }

    @Test
    void aDirtyFlameSensorIsCleanedAndNothingElse() {
        var plan = ScopeBuilder.plan(settled(cause("LD05", "flame-sensor")), file(), shop, larkwell);

        assertThat(plan.scopes()).hasSize(1);
        assertThat(ids(plan.scopes().get(0))).containsExactly("R06");
        assertThat(hours(plan.scopes().get(0))).isEqualByComparingTo("0.65");
        assertThat(plan.scopes().get(0).tests()).containsExactly("F");
        assertThat(parts(plan.scopes().get(0))).isEmpty();
    }

    @Test
    void aSingleSwitchIsEnoughWhenTheOtherIsProvedGoodAndTheWaterIsStopped() {
        var file = file(
                ohms("leak-high-limit", "18 kilohm", "cold"),
                ohms("leak-high-limit", "18 kilohm", "warm"),
                open("leak-outlet", "cold"),
                open("leak-outlet", "warm"),
                ohms("contact-outlet", "0.2 ohm"),
                word("water-source", "sealed"));
        var plan =
                ScopeBuilder.plan(settled(cause("LD02", "high-limit-switch")), file, shop, larkwell.withPartYears(3));

        assertThat(plan.scopes()).extracting(Scope::id).containsExactly("one", "both");
        var one = plan.scopes().get(0);
        assertThat(one.suggested()).isTrue();
        assertThat(hours(one)).isEqualByComparingTo("1.05");
        assertThat(notes(one)).containsExactly("N-HOT", "N-NOBYPASS", "N-SINGLE", "N-WATER", "N-WATERSRC");
        assertThat(hours(plan.scopes().get(1))).isEqualByComparingTo("1.35");
        assertThat(plan.scopes().get(1).extraNotes()).doesNotContain("N-SINGLE");
    }

    @Test
    void aShortSupplyIsTheUtilitysAndNoPipeIsSold() {
        var file = withPipe(file(), Reconciliation.Verdict.DOES_NOT_EXPLAIN);
        var plan = ScopeBuilder.plan(
                settled(cause("LD03M", "gas-meter")), file, shop, larkwell.withPipes(List.of(largerLine())));

        assertThat(plan.scopes()).hasSize(1);
        assertThat(ids(plan.scopes().get(0))).containsExactly("R20u");
        assertThat(hours(plan.scopes().get(0))).isEqualByComparingTo("0.50");
        assertThat(parts(plan.scopes().get(0))).isEmpty();
        assertThat(notes(plan.scopes().get(0))).containsExactly("N-UTIL");
    }

    @Test
    void aLimitThatTripsFromLowFlowIsLeftAloneAndTheFilterIsCleaned() {
        var plan = ScopeBuilder.plan(settled(cause("TM01")), file(), shop, larkwell);

        var scope = plan.scopes().get(0);
        assertThat(ids(scope)).containsExactly("R40", "R00");
        assertThat(hours(scope)).isEqualByComparingTo("1.00");
        assertThat(scope.tests()).containsExactly("B", "H");
        assertThat(scope.extraNotes()).isEmpty();
        assertThat(parts(scope)).doesNotContainKeys("SW-01", "SW-02", "SW-03", "SW-04");
    }

    @Test
    void aScopeAfterABypassTestAlwaysPrintsThatNoSafetyDeviceIsBypassed() {
        var plan = ScopeBuilder.plan(settled(cause("TM01")), Visits.bypassed(file()), shop, larkwell);

        assertThat(plan.scopes().get(0).extraNotes()).containsExactly("N-NOBYPASS");
    }

    @Test
    void aWetPairAndADirtySensorShareTheOpeningOfTheHeater() {
        var plan = ScopeBuilder.plan(
                settled(cause("LD01", "high-limit-switch", "outlet-switch"), cause("LD05", "flame-sensor")),
                file(),
                shop,
                larkwell);

        assertThat(plan.scopes()).extracting(Scope::id).containsExactly("both+clean-sensor", "one+clean-sensor");
        assertThat(hours(plan.scopes().get(0))).isEqualByComparingTo("1.50");
        assertThat(plan.scopes().get(0).tests()).containsExactly("B", "D", "E", "F", "H");
    }

    @Test
    void aRolloutFuseIsRenewedOnlyAfterTheReleaseAndTogetherWithItsCause() {
        var plan = ScopeBuilder.plan(settled(cause("SR06")), Visits.released(file()), shop, larkwell);

        assertThat(ids(plan.scopes().get(0))).containsExactly("R16", "R25");
        assertThat(plan.scopes().get(0).tests()).contains("G");
        assertThat(trades(plan.scopes().get(0))).containsExactly(Trade.TECHNICIAN, Trade.GAS_FITTER);
    }

    static PipeJob largerLine() {
        return new PipeJob(
                "larger-line",
                "Larger gas line, 1-1/4 in",
                "steel-schedule-40",
                "1-1/4",
                "1-1/4",
                Length.ofFeet(84),
                Map.of("ell-90", 8, "coupling", 6),
                false,
                new PipeJob.Sizing("At 388 ft3/h 1-1/4 in loses 0.6 in w.c. over 110 ft.", "low-pressure equation"),
                "",
                List.of());
    }

    private static List<String> ids(Scope scope) {
        return scope.tasks().stream().map(task -> task.task().id()).toList();
    }

    private static BigDecimal own(Scope scope) {
        return scope.tasks().stream()
                .map(task -> task.task().ownHours(task.counts()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Own hours and each access step once, before conditions and rounding. */
    private BigDecimal hours(Scope scope) {
        List<Task> tasks = scope.tasks().stream().map(ScopedTask::task).toList();
        return shop.accessFor(tasks).stream().map(step -> step.hours()).reduce(own(scope), BigDecimal::add);
    }

    private static Set<String> notes(Scope scope) {
        var notes = new TreeSet<>(scope.extraNotes());
        scope.tasks().forEach(task -> notes.addAll(task.task().notes()));
        return notes;
    }

    private static Set<Trade> trades(Scope scope) {
        var trades = new TreeSet<Trade>();
        scope.tasks().forEach(task -> trades.addAll(task.task().trades()));
        return trades;
    }

    private static Map<String, BigDecimal> parts(Scope scope) {
        var parts = new TreeMap<String, BigDecimal>();
        scope.tasks()
                .forEach(task -> task.parts()
                        .forEach(part -> parts.merge(part.part().number(), part.quantity(), BigDecimal::add)));
        return parts;
    }
}
