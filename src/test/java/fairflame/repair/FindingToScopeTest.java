package fairflame.repair;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Diagnosis;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.GateAnswer;
import fairflame.diagnosis.Knowledge;
import fairflame.diagnosis.RatingPlate;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Release;
import fairflame.gas.Fuel;
import fairflame.gas.Reconciliation;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Pressure;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Invented acceptance cases from their readings, through the finding, to the tasks of the scope. */
class FindingToScopeTest {
    private static final Knowledge KNOWLEDGE = Knowledge.shipped();

    private final Shop shop = SampleFolder.shop();
    private final RepairInputs larkwell = RepairInputs.in(shop.jurisdiction("larkwell"));

    @Test
    void bothSwitchesWet() {
        var file = visit(
                "drops-out",
                4,
                "seconds-to-drop-out 25 s",
                "worse-after-rain yes",
                "gas-static 10.1 inwc|u-tube",
                "gas-firing 8.9 inwc|u-tube|furnace-on",
                "line-volts 121 v",
                "transformer-idle 26.3 v",
                "valve-low 15.7 v|multimeter-minimum-hold",
                "transformer-low 21 v|multimeter-minimum-hold",
                "flame-signal 2.6 ua",
                "leak-high-limit 22 kilohm|ohmmeter|leads-lifted",
                "leak-outlet 31 kilohm|ohmmeter|leads-lifted",
                "leak-others over 20 megohm",
                "contact-high-limit 6 ohm",
                "contact-outlet 4 ohm",
                "common-to-chassis bonded",
                "switch-bodies crust");
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(ids(plan, 0)).containsExactly("R03");
        assertThat(plan.scopes().get(0).id()).isEqualTo("both");
        assertThat(hours(plan, 0)).isEqualByComparingTo("1.35");
        assertThat(plan.reasons()).anyMatch(reason -> reason.startsWith("By rule"));
    }

    @Test
    void oneSwitchWetAndTheWaterStopped() {
        var file = visit(
                "drops-out",
                4,
                "seconds-to-drop-out 25 s",
                "gas-static 10.1 inwc|u-tube",
                "gas-firing 8.9 inwc|u-tube|furnace-on",
                "line-volts 121 v",
                "valve-low 15.7 v|multimeter-minimum-hold",
                "transformer-low 21 v|multimeter-minimum-hold",
                "flame-signal 2.6 ua",
                "leak-high-limit 18 kilohm|ohmmeter|cold|warm|leads-lifted",
                "leak-outlet over 20 megohm|ohmmeter|cold|warm|leads-lifted",
                "contact-outlet 0.2 ohm",
                "switch-age 3 years",
                "water-source sealed");
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(plan.scopes()).extracting(Scope::id).containsExactly("one", "both");
        assertThat(plan.scopes().get(0).tasks().get(0).parts().get(0).part().role())
                .isEqualTo("high-limit-switch");
        assertThat(hours(plan, 0)).isEqualByComparingTo("1.05");
        assertThat(hours(plan, 1)).isEqualByComparingTo("1.35");
    }

    @Test
    void gasLineTooSmall() {
        var bare = visit(
                "drops-out",
                6,
                "seconds-to-drop-out 6 s",
                "gas-static 10.2 inwc|fast-analogue",
                "gas-firing 3.9 inwc|fast-analogue",
                "gas-meter-firing 9.8 inwc|fast-analogue",
                "cock-handle parallel",
                "gas-before-cock 4.0 inwc",
                "gas-after-cock 4.0 inwc",
                "valve-low 24.6 v|multimeter-minimum-hold",
                "leak-high-limit over 20 megohm|ohmmeter|warm",
                "leak-outlet over 20 megohm|ohmmeter|warm");
        var file = Visits.withPipe(bare, Reconciliation.Verdict.EXPLAINS);
        var plan = ScopeBuilder.plan(
                settled(file), file, shop, larkwell.withPipes(List.of(AcceptanceScopeTest.largerLine())));

        assertThat(ids(plan, 0)).containsExactly("R18");
        assertThat(hours(plan, 0)).isEqualByComparingTo("13.68");
    }

    @Test
    void dirtyFlameSensor() {
        var file = visit(
                "drops-out",
                4,
                "seconds-to-drop-out 5 s",
                "gas-static 7.2 inwc",
                "gas-firing 6.0 inwc",
                "valve-low 25.1 v|multimeter-minimum-hold",
                "flame-signal 0.6 ua|microammeter|in-series",
                "flame-steadiness steady",
                "flame-signal-cleaned 3.1 ua",
                "cycles-after-cleaning 3 times",
                "ground-resistance 0.4 ohm");
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(ids(plan, 0)).containsExactly("R06");
        assertThat(hours(plan, 0)).isEqualByComparingTo("0.65");
    }

    @Test
    void sootAndAnOpenRolloutFuseAfterTheRelease() {
        var file = withRelease(visit(
                "trips-after-minutes",
                4,
                "soot dry",
                "rollout-fuse open",
                "wiring-look browned",
                "valve-low 25 v|multimeter-minimum-hold",
                "gas-static 9 inwc",
                "gas-firing 8 inwc"));
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(ids(plan, 0)).containsExactlyInAnyOrder("R16", "R25");
        assertThat(plan.scopes().get(0).tests()).contains("G");
    }

    @Test
    void meterTooSmall() {
        var file = visit(
                "weak-heat",
                4,
                "gas-static 7.0 inwc",
                "gas-firing 4.2 inwc||heater-alone",
                "gas-firing 3.4 inwc||furnace-on",
                "gas-meter-firing 4.3 inwc||heater-alone",
                "gas-meter-firing 3.6 inwc||furnace-on",
                "clocked-input 292000 btu/h",
                "water-rise 7 f",
                "load-sum 610000 btu/h",
                "meter-rating 425 cfh");
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(ids(plan, 0)).containsExactly("R20u");
        assertThat(plan.scopes()).hasSize(1);
        assertThat(hours(plan, 0)).isEqualByComparingTo("0.50");
    }

    @Test
    void limitTripsFromLowFlow() {
        var file = visit(
                "trips-after-minutes",
                4,
                "seconds-to-drop-out 420 s",
                "resets-as-it-cools yes",
                "filter-pressure 28 psi",
                "filter-clean-pressure 12 psi",
                "water-rise 23 f",
                "header-at-trip 136 f",
                "valve-low 25 v|multimeter-minimum-hold",
                "leak-high-limit over 20 megohm|ohmmeter|warm",
                "leak-outlet over 20 megohm|ohmmeter|warm",
                "gas-static 9.5 inwc",
                "gas-firing 8.5 inwc");
        var plan = ScopeBuilder.plan(settled(file), file, shop, larkwell);

        assertThat(ids(plan, 0)).containsExactly("R40", "R00");
    }

    private static Finding.Settled settled(CaseFile file) {
        return Diagnosis.of(KNOWLEDGE, file)
                .match(
                        settled -> settled,
                        unsettled -> {
                            throw new AssertionError("not settled, next: " + unsettled.next());
                        },
                        stop -> {
                            throw new AssertionError("stop-work: " + stop.dangers());
                        });
    }

    /** Readings as {@code check value|instrument|condition|condition}. */
    private static CaseFile visit(String complaint, double inletMinimum, String... readings) {
        var gates = KNOWLEDGE.gates().stream().collect(Collectors.toMap(gate -> gate.id(), gate -> GateAnswer.NO));
        var plate = new RatingPlate(
                "gas pool heater, fan assisted",
                Fuel.NATURAL,
                Optional.of(HeatRate.ofBtuPerHour(400_000)),
                Optional.of(Pressure.ofInchesWater(inletMinimum)),
                Optional.of(Pressure.ofInchesWater(14)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(BigDecimal.valueOf(15)),
                Optional.of(BigDecimal.valueOf(82)),
                Optional.empty());
        return new CaseFile(
                complaint,
                plate,
                gates,
                Arrays.stream(readings).map(FindingToScopeTest::reading).toList(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    private static Reading reading(String line) {
        var parts = line.split("\\|");
        var head = parts[0].split(" ", 2);
        var conditions = new TreeSet<>(Arrays.asList(parts).subList(Math.min(2, parts.length), parts.length));
        return KNOWLEDGE.reading(head[0], head[1], parts.length > 1 ? parts[1] : "", Set.copyOf(conditions));
    }

    private static CaseFile withRelease(CaseFile file) {
        var release = new Release("G3", "M. Ferrante", "GF-20417", "blocked flue passages");
        return new CaseFile(
                file.complaint(),
                file.plate(),
                file.gates(),
                file.readings(),
                file.leads(),
                List.of(release),
                file.pipe());
    }

    private static List<String> ids(RepairPlan plan, int scope) {
        return plan.scopes().get(scope).tasks().stream()
                .map(task -> task.task().id())
                .toList();
    }

    private BigDecimal hours(RepairPlan plan, int scope) {
        var tasks = plan.scopes().get(scope).tasks();
        var own = tasks.stream()
                .map(task -> task.task().ownHours(task.counts()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return shop.accessFor(tasks.stream().map(ScopedTask::task).toList()).stream()
                .map(step -> step.hours())
                .reduce(own, BigDecimal::add);
    }
}
