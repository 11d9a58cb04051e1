package fairflame.repair;

import static fairflame.repair.Visits.cause;
import static fairflame.repair.Visits.file;
import static fairflame.repair.Visits.ohms;
import static fairflame.repair.Visits.open;
import static fairflame.repair.Visits.released;
import static fairflame.repair.Visits.settled;
import static fairflame.repair.Visits.withPipe;
import static fairflame.repair.Visits.word;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.catalog.ShopFiles;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.CaseFile;
import fairflame.gas.Reconciliation.Verdict;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tasks that cannot stand side by side, or not alone: refused or merged. */
class ConflictsTest {
    private final Shop shop = SampleFolder.shop();
    private final RepairInputs larkwell = RepairInputs.in(shop.jurisdiction("larkwell"));

    @Test
    void resealingASwitchIsPartOfReplacingIt() {
        var plan = ScopeBuilder.plan(
                settled(cause("LK03", "high-limit-switch", "outlet-switch"), cause("LD02", "high-limit-switch")),
                file(open("leak-high-limit", "cold"), open("leak-outlet", "cold")),
                shop,
                larkwell);

        assertThat(ids(plan.scopes().get(0))).containsExactly("R03");
        assertThat(plan.reasons()).anyMatch(reason -> reason.contains("R02") && reason.contains("part of R03"));
    }

    @Test
    void resealingOneSwitchStandsBesideReplacingTheOther() {
        var file = file(
                ohms("leak-outlet", "18 kilohm", "cold"),
                open("leak-high-limit", "cold"),
                open("leak-high-limit", "warm"),
                ohms("contact-high-limit", "0.2 ohm"),
                word("water-source", "sealed"));
        var planned = List.of(planned("R02", List.of("high-limit-switch")), planned("R03", List.of("outlet-switch")));

        assertThat(Merging.merge(planned, new ArrayList<>())).hasSize(2);
        assertThat(ScopeBuilder.plan(settled(cause("LD02", "outlet-switch")), file, shop, larkwell.withPartYears(2))
                        .scopes()
                        .get(0)
                        .id())
                .isEqualTo("one");
    }

    @Test
    void aSwitchIsResealedOnlyWhenItIsDry() {
        assertThatThrownBy(
                        () -> plan(larkwell.adding(added("R02")), file(ohms("leak-high-limit", "18 kilohm")), "LD05"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R02")
                .hasMessageContaining("measure dry");
    }

    @Test
    void aRolloutFuseIsNotSoldWithoutARelease() {
        assertThatThrownBy(() -> plan(larkwell, file(), "SR06"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("licensed person has released");
    }

    @Test
    void aRolloutFuseIsNotSoldAlone() {
        assertThatThrownBy(() -> plan(larkwell.adding(added("R16")), released(file()), "LD05"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R16")
                .hasMessageContaining("together with one of")
                .hasMessageContaining("R25");
    }

    @Test
    void sootIsNotCleanedWithoutItsCause() {
        assertThatThrownBy(() -> plan(larkwell, file(), "SR03"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R25")
                .hasMessageContaining("what caused the damage");
        assertThat(ids(plan(larkwell, released(file()), "SR03").scopes().get(0)))
                .containsExactly("R25");
        assertThat(ids(plan(larkwell, file(), "SR03", "SR02").scopes().get(0))).containsExactly("R25", "R21", "R41");
    }

    @ParameterizedTest
    @ValueSource(strings = {"R10", "R44"})
    void theManifoldIsNotTouchedWhileTheInletIsLow(String task) {
        var file = withPipe(file(), Verdict.EXPLAINS);
        var inputs =
                larkwell.withPipes(List.of(AcceptanceScopeTest.largerLine())).adding(added(task));

        assertThatThrownBy(() -> ScopeBuilder.plan(settled(cause("LD03")), file, shop, inputs))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining(task)
                .hasMessageContaining("LD03");
    }

    @Test
    void noPipeIsSoldWithoutASizingRecord() {
        assertThatThrownBy(() -> plan(larkwell, withPipe(file(), Verdict.EXPLAINS), "LD03"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("sizing record for task R18")
                .hasMessageContaining("no pipe is sold by guess");
        assertThatThrownBy(() -> plan(larkwell.adding(added("R19")), file(), "LD05"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("sizing record for task R19");
    }

    @ParameterizedTest
    @EnumSource(value = Verdict.class, names = "EXPLAINS", mode = EnumSource.Mode.EXCLUDE)
    void noPipeIsSoldThatDoesNotExplainTheDip(Verdict verdict) {
        var inputs = larkwell.withPipes(List.of(AcceptanceScopeTest.largerLine()));

        assertThatThrownBy(() -> plan(inputs, withPipe(file(), verdict), "LD03"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("pipe size explains the measured dip")
                .hasMessageContaining("regulator");
    }

    @Test
    void noPipeIsSoldWithoutTheComparison() {
        var inputs = larkwell.withPipes(List.of(AcceptanceScopeTest.largerLine()));

        assertThatThrownBy(() -> plan(inputs, file(), "LD03"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("measured and computed dip");
    }

    @Test
    void aNewHeaterTakesInEveryRepairOfTheOldOne() {
        var plan = plan(larkwell, file(), "LK05", "LD05", "NI10");
        var newHeater = plan.scopes().get(1);

        assertThat(newHeater.id()).startsWith("new-heater");
        assertThat(ids(newHeater)).containsExactly("R28");
        assertThat(ids(plan.scopes().get(0))).containsExactly("R27", "R06", "R04");
    }

    @Test
    void descalingBesideAHoleIsRefusedWhenNothingTakesItIn() {
        var checks = new TaskRequirements(shop.book(), List.of(cause("LK05")));
        var facts = KnownFacts.of(settled(cause("LK05")), file(), shop, larkwell);

        assertThatThrownBy(() -> checks.check(List.of(planned("R24", List.of())), facts))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R24")
                .hasMessageContaining("LK05");
    }

    @Test
    void aBoardIsNotReplacedBeforeTheWaterIsAnswered() {
        assertThatThrownBy(() -> plan(larkwell, file(), "LO04"))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R09")
                .hasMessageContaining("water");
    }

    @Test
    void twoTasksMayNotRenewOnePart() {
        var two = List.of(planned("R19", List.of()), planned("R18", List.of()));

        assertThatThrownBy(() -> Merging.merge(two, new ArrayList<>()))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("renews")
                .hasMessageContaining("R19 renews it already");
    }

    @Test
    void aNewHeaterTakesShutoffAndTrapOfANewGasLineWhicheverComesFirst() {
        for (var order : List.of(List.of("R28", "R18"), List.of("R18", "R28"), List.of("R28", "R45"))) {
            var reasons = new ArrayList<String>();
            var merged = Merging.merge(
                    order.stream().map(id -> planned(id, List.of())).toList(), reasons);

            assertThat(merged).extracting(each -> each.task().id()).containsExactlyElementsOf(order);
            var needs = merged.stream()
                    .flatMap(each -> each.task().needs().stream())
                    .map(need -> need.role())
                    .toList();
            assertThat(needs).containsOnlyOnce("gas-cock", "sediment-trap").contains("heater", "gas-connector");
            assertThat(reasons)
                    .anyMatch(
                            reason -> reason.contains("gas-cock is renewed once") && reason.contains("R28 leaves it"));
        }
    }

    @Test
    void aNewHeaterAloneBringsItsOwnShutoffAndTrap() {
        var merged = Merging.merge(List.of(planned("R28", List.of())), new ArrayList<>());

        assertThat(merged.get(0).task().needs()).extracting(need -> need.role()).contains("gas-cock", "sediment-trap");
    }

    @Test
    void statedConflictsAreRefused() {
        var files = SampleFolder.files();
        files.computeIfPresent("tasks.yaml", (name, text) -> text.replace("conflicts: []", "conflicts: [R06]"));
        var strict = ShopFiles.parse(files);
        var two = List.of(planned(strict, "R02"), planned(strict, "R06"));

        assertThatThrownBy(() -> Merging.merge(two, new ArrayList<>()))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("task beside R02")
                .hasMessageContaining("R06");
    }

    private RepairPlan plan(RepairInputs inputs, CaseFile file, String... causes) {
        var candidates = Arrays.stream(causes).map(id -> cause(id)).toArray(Candidate[]::new);
        return ScopeBuilder.plan(settled(candidates), file, shop, inputs);
    }

    private static AddedTask added(String task) {
        return new AddedTask(task, BigDecimal.ONE, "asked for");
    }

    private PlannedTask planned(String task, List<String> devices) {
        return new PlannedTask(shop.task(task), devices, BigDecimal.ONE, Optional.empty(), "", "");
    }

    private static PlannedTask planned(Shop shop, String task) {
        return new PlannedTask(shop.task(task), List.of(), BigDecimal.ONE, Optional.empty(), "", "");
    }

    private static List<String> ids(Scope scope) {
        return scope.tasks().stream().map(task -> task.task().id()).toList();
    }
}
