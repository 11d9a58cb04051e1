package fairflame.repair;

import static fairflame.repair.Visits.cause;
import static fairflame.repair.Visits.file;
import static fairflame.repair.Visits.settled;
import static fairflame.repair.Visits.withPipe;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Per;
import fairflame.catalog.Remedy;
import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.catalog.Trade;
import fairflame.gas.Reconciliation.Verdict;
import fairflame.quantity.Dimension;
import fairflame.quantity.Length;
import fairflame.quantity.Measure;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ScopeBuilderTest {
    private final Shop shop = SampleFolder.shop();
    private final RepairInputs larkwell = RepairInputs.in(shop.jurisdiction("larkwell"));

    @Test
    void everyRemedyOfTheSampleBookCanBeOffered() {
        var inputs = larkwell.withPipes(List.of(line("larger-line", "1-1/4"))).stating(Set.of("board-water-answered"));
        var file = Visits.released(withPipe(file(), Verdict.EXPLAINS));
        for (var remedy : shop.book().remedies()) {
            var plan = ScopeBuilder.plan(settled(cause(remedy.cause(), devices(remedy))), file, shop, inputs);

            assertThat(plan.scopes().isEmpty())
                    .as(remedy.cause())
                    .isEqualTo(remedy.ways().isEmpty());
            assertThat(plan.reasons()).as(remedy.cause()).isNotEmpty();
            assertThat(plan.scopes()).as(remedy.cause()).extracting(Scope::id).doesNotHaveDuplicates();
            assertThat(plan.scopes().stream().filter(Scope::suggested))
                    .as(remedy.cause())
                    .hasSize(plan.scopes().isEmpty() ? 0 : 1);
            plan.scopes()
                    .forEach(scope ->
                            assertThat(scope.tasks()).as(remedy.cause()).isNotEmpty());
        }
    }

    @Test
    void everyAlternativeOfTheBookHoldsForTheDeviceThatItNames() {
        for (var remedy : shop.book().remedies()) {
            for (var way : remedy.ways()) {
                var device = way.when().stream()
                        .filter(when -> when.startsWith("device:"))
                        .findFirst();
                if (device.isPresent()) {
                    var inputs = larkwell.stating(Set.of("board-water-answered"));
                    var named = cause(remedy.cause(), device.get().substring("device:".length()));
                    var plan = ScopeBuilder.plan(settled(named), file(), shop, inputs);

                    assertThat(plan.scopes().get(0).id()).as(remedy.cause()).isEqualTo(way.id());
                }
            }
        }
    }

    @Test
    void aCauseWithoutARemedyIsRefused() {
        assertThatThrownBy(() -> ScopeBuilder.plan(settled(cause("ZZ99")), file(), shop, larkwell))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("ZZ99")
                .hasMessageContaining("scopes.yaml");
    }

    @Test
    void whereNothingIsToBeRepairedTheAdviceIsTold() {
        var plan = ScopeBuilder.plan(settled(cause("WH03")), file(), shop, larkwell);

        assertThat(plan.scopes()).isEmpty();
        assertThat(plan.reasons()).hasSize(1).first().asString().contains("cover");
    }

    @Test
    void adviceStandsBesideTheRepairOfAnotherCause() {
        var plan = ScopeBuilder.plan(settled(cause("LO01"), cause("LD05")), file(), shop, larkwell);

        assertThat(plan.scopes()).hasSize(1);
        assertThat(plan.reasons()).anyMatch(reason -> reason.contains("lockout"));
    }

    @Test
    void severalSizedLinesAreSeveralChoicesTheFirstSuggested() {
        var file = withPipe(file(), Verdict.EXPLAINS);
        var lines = List.of(line("larger-line", "1-1/4"), line("one-inch-line", "1"));
        var plan = ScopeBuilder.plan(settled(cause("LD03", "gas-line")), file, shop, larkwell.withPipes(lines));

        assertThat(plan.scopes()).extracting(Scope::id).containsExactly("larger-line", "one-inch-line");
        assertThat(plan.scopes()).extracting(Scope::suggested).containsExactly(true, false);
        assertThat(numbers(plan.scopes().get(0))).contains("GP-04").doesNotContain("GP-03");
        assertThat(numbers(plan.scopes().get(1))).contains("GP-03");
        assertThat(plan.scopes().get(0).plain()).contains("sized for 1-1/4");
        assertThat(plan.scopes().get(1).leavesUnfixed()).isEqualTo("what 1 leaves");
    }

    @Test
    void aBuriedLineIsLaidInPlasticWithTracerAndRisers() {
        var buried = new PipeJob(
                "larger-line",
                "",
                "polyethylene",
                "1-1/4",
                "1",
                Length.ofFeet(40),
                Map.of("ell-90", 2),
                true,
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of());
        var plan = ScopeBuilder.plan(
                settled(cause("LD03")), withPipe(file(), Verdict.EXPLAINS), shop, larkwell.withPipes(List.of(buried)));
        var scope = plan.scopes().get(0);

        assertThat(ids(scope)).containsExactly("R19");
        assertThat(scope.title()).isEqualTo("Larger gas line, underground");
        assertThat(quantities(scope))
                .containsEntry("PP-03", new BigDecimal("40"))
                .containsEntry("PE9-03", new BigDecimal("2"))
                .containsEntry("PR-03", new BigDecimal("2"))
                .containsEntry("TW-01", new BigDecimal("44"))
                .containsEntry("GV-03", new BigDecimal("1"));
        assertThat(scope.tasks().get(0).task().ownHours(scope.tasks().get(0).counts()))
                .isEqualByComparingTo("10.00");
    }

    @Test
    void corrugatedTubingIsRunAndBondedByItsOwnTask() {
        var csst = new PipeJob(
                "larger-line",
                "",
                "csst",
                "31",
                "1",
                Length.ofFeet(30),
                Map.of(),
                false,
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of("R20"));
        var plan = ScopeBuilder.plan(
                settled(cause("LD03")), withPipe(file(), Verdict.EXPLAINS), shop, larkwell.withPipes(List.of(csst)));

        assertThat(ids(plan.scopes().get(0))).containsExactly("R45", "R20");
        assertThat(numbers(plan.scopes().get(0))).contains("CP-03", "CF-03", "CB-01", "RG-02");
        assertThat(plan.scopes().get(0).tests()).contains("J", "L");
    }

    @Test
    void aLineThatIsPartlyBuriedIsLaidByTwoTasksEachWithItsOwnPipe() {
        var line = new PipeJob(
                "larger-line",
                "",
                List.of(
                        new PipeRun("polyethylene", "1-1/4", Length.ofFeet(40), Map.of("ell-90", 2), true),
                        new PipeRun("steel-schedule-40", "1", Length.ofFeet(12), Map.of("ell-90", 3), false)),
                "1",
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of());
        var plan = ScopeBuilder.plan(
                settled(cause("LD03")), withPipe(file(), Verdict.EXPLAINS), shop, larkwell.withPipes(List.of(line)));
        var scope = plan.scopes().get(0);

        assertThat(plan.scopes()).hasSize(1);
        assertThat(ids(scope)).containsExactly("R19", "R57");
        assertThat(scope.tasks().get(0).counts()).containsEntry(Per.FOOT, new BigDecimal("40"));
        assertThat(scope.tasks().get(1).counts())
                .containsEntry(Per.FOOT, new BigDecimal("12"))
                .containsEntry(Per.FITTING, new BigDecimal("3"));
        assertThat(quantities(scope))
                .containsEntry("PP-03", new BigDecimal("40"))
                .containsEntry("PE9-03", new BigDecimal("2"))
                .containsEntry("GP-03", new BigDecimal("12"))
                .containsEntry("GE9-03", new BigDecimal("3"))
                .containsEntry("GH-03", new BigDecimal("2"));
    }

    @Test
    void pipeIsExplainedByItsSizingAndOtherPartsByTheirTask() {
        var plan = ScopeBuilder.plan(
                settled(cause("LD03")),
                withPipe(file(), Verdict.EXPLAINS),
                shop,
                larkwell.withPipes(List.of(line("larger-line", "1-1/4"))));
        var parts = plan.scopes().get(0).tasks().get(0).parts();

        assertThat(parts)
                .filteredOn(part -> part.part().number().equals("GP-04"))
                .extracting(ScopedPart::why)
                .containsExactly("sized for 1-1/4");
        assertThat(parts)
                .filteredOn(part -> part.part().number().equals("GV-04"))
                .extracting(ScopedPart::why)
                .containsExactly("used up by R18");
    }

    @Test
    void aWordOfAnotherCheckEstablishesNoFact() {
        var right = file(Visits.word("board-moisture", "dry"));
        var wrong = file(Visits.word("board-look", "dry"));

        assertThat(ids(ScopeBuilder.plan(settled(cause("LO04")), right, shop, larkwell)
                        .scopes()
                        .get(0)))
                .containsExactly("R09", "R49");
        assertThatThrownBy(() -> ScopeBuilder.plan(settled(cause("LO04")), wrong, shop, larkwell))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("R09");
    }

    @Test
    void theCockAndTrapOfTheLayoutAreNotSoldTwice() {
        var job = new PipeJob(
                "larger-line",
                "",
                "steel-schedule-40",
                "1",
                "1",
                Length.ofFeet(10),
                Map.of("cock", 1, "sediment-trap", 1, "ball-valve", 1, "tee-run", 1, "tee-branch", 2),
                false,
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of());
        var plan = ScopeBuilder.plan(
                settled(cause("LD03")), withPipe(file(), Verdict.EXPLAINS), shop, larkwell.withPipes(List.of(job)));

        // Two cocks in the layout, one of them at the heater; all six fittings count as work.
        assertThat(quantities(plan.scopes().get(0)))
                .containsEntry("GV-03", new BigDecimal("2"))
                .containsEntry("GS-03", new BigDecimal("1"))
                .containsEntry("GT-03", new BigDecimal("3"));
        assertThat(plan.scopes().get(0).tasks().get(0).counts()).containsEntry(Per.FITTING, new BigDecimal("6"));
    }

    @Test
    void aSizeThatTheShopDoesNotKeepIsRefusedWithThoseItHas() {
        var inputs = larkwell.withPipes(List.of(line("larger-line", "3")));

        assertThatThrownBy(() ->
                        ScopeBuilder.plan(settled(cause("LD03")), withPipe(file(), Verdict.EXPLAINS), shop, inputs))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("pipe-steel-schedule-40")
                .hasMessageContaining("1-1/4");
    }

    @Test
    void aFittingThatTheBookDoesNotKnowIsRefused() {
        var job = new PipeJob(
                "larger-line",
                "",
                "steel-schedule-40",
                "1",
                "1",
                Length.ofFeet(10),
                Map.of("corkscrew", 1),
                false,
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of());

        assertThatThrownBy(() -> ScopeBuilder.plan(
                        settled(cause("LD03")),
                        withPipe(file(), Verdict.EXPLAINS),
                        shop,
                        larkwell.withPipes(List.of(job))))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("corkscrew")
                .hasMessageContaining("ell-90");
    }

    @Test
    void feetAreCountedWholeAndAConversionErrorIsNotAFoot() {
        assertThat(job(Length.of(Measure.parse(Dimension.LENGTH, "25.6032m"))).wholeFeet())
                .isEqualByComparingTo("84");
        assertThat(job(Length.ofFeet(84.01)).wholeFeet()).isEqualByComparingTo("85");
    }

    @Test
    void impossibleLinesAreRefused() {
        assertThatThrownBy(() -> job(Length.ofFeet(0)))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("length of gas line");
        assertThatThrownBy(() -> new PipeJob(
                        "a",
                        "",
                        "steel-schedule-40",
                        "1",
                        "1",
                        Length.ofFeet(1),
                        Map.of("ell-90", -1),
                        false,
                        new PipeJob.Sizing("sized", "table"),
                        "",
                        List.of()))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("ell-90");
        assertThatThrownBy(() -> new PipeJob(
                        "a",
                        "",
                        "steel-schedule-40",
                        "1",
                        "1",
                        Length.ofFeet(1),
                        Map.of(),
                        false,
                        new PipeJob.Sizing(" ", "table"),
                        "",
                        List.of()))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("sizing record of gas line a");
    }

    @Test
    void ratingsAreLikeForLikeAndReadOffTheOldPart() {
        var open = ScopeBuilder.plan(settled(cause("LD01")), file(), shop, larkwell);
        var read = ScopeBuilder.plan(
                settled(cause("LD01")),
                file(),
                shop,
                larkwell.withSizes(Map.of("high-limit-switch", "150F", "outlet-switch", "135F")));

        assertThat(numbers(open.scopes().get(0))).contains("SW-01", "SW-03");
        assertThat(open.scopes().get(0).tasks().get(0).parts())
                .anyMatch(part -> part.why().contains("read off the old part"));
        assertThat(numbers(read.scopes().get(0))).contains("SW-02", "SW-03");
        assertThatThrownBy(() -> ScopeBuilder.plan(
                        settled(cause("LD01")), file(), shop, larkwell.withSizes(Map.of("high-limit-switch", "170F"))))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("170F")
                .hasMessageContaining("135F");
    }

    @Test
    void theSealantOfEachJointIsToldWithItsJoint() {
        var parts = ScopeBuilder.plan(settled(cause("LD01")), file(), shop, larkwell)
                .scopes()
                .get(0)
                .tasks()
                .get(0)
                .parts();

        assertThat(parts.stream().filter(part -> part.part().number().equals("SE-01")))
                .singleElement()
                .satisfies(
                        part -> assertThat(part.why()).startsWith("sealant for").contains("water side"));
    }

    @Test
    void theHeatersGasConnectionIsThreeQuarterInchUnlessItIsRead() {
        var usual = ScopeBuilder.plan(settled(cause("LD04")), file(), shop, larkwell);
        var read = ScopeBuilder.plan(settled(cause("LD04")), file(), shop, larkwell.withSizes(Map.of("inlet", "1")));

        assertThat(numbers(usual.scopes().get(0))).contains("GV-02");
        assertThat(numbers(read.scopes().get(0))).contains("GV-03");
    }

    @Test
    void anAddedTaskStandsInEveryScope() {
        var inputs = larkwell.adding(new AddedTask("R35", BigDecimal.valueOf(2), "Two inspections are asked for."));
        var plan = ScopeBuilder.plan(settled(cause("LD01")), file(), shop, inputs);

        assertThat(plan.scopes()).allSatisfy(scope -> assertThat(ids(scope)).containsExactly("R03", "R35"));
        assertThat(plan.scopes().get(0).tasks().get(1).counts()).containsEntry(Per.PIECE, new BigDecimal("2"));
    }

    @Test
    void thePlaceDecidesWhoWorksAtATestTap() {
        var here = ScopeBuilder.plan(settled(cause("LD16")), file(), shop, larkwell);
        var there = ScopeBuilder.plan(
                settled(cause("LD16")), file(), shop, RepairInputs.in(shop.jurisdiction("brinefield")));

        assertThat(here.scopes().get(0).tasks().get(0).task().trades()).containsExactly(Trade.TECHNICIAN);
        assertThat(there.scopes().get(0).tasks().get(0).task().trades()).containsExactly(Trade.GAS_FITTER);
        assertThat(there.scopes().get(0).tasks().get(0).task().regulatedGas()).isTrue();
    }

    @Test
    void anOldHeaterIsOfferedAgainstAScaledExchanger() {
        var file = Visits.withHeaterYears(file(), 8);

        assertThat(ScopeBuilder.plan(settled(cause("TM03")), file, shop, larkwell)
                        .scopes())
                .extracting(Scope::id)
                .containsExactly("descale", "exchanger", "new-heater");
        assertThat(ScopeBuilder.plan(settled(cause("TM03")), Visits.withHeaterYears(file(), 7), shop, larkwell)
                        .scopes())
                .extracting(Scope::id)
                .containsExactly("descale", "exchanger");
    }

    @Test
    void theSameTaskForTwoCausesIsDoneOnceOnTheDevicesOfBoth() {
        var plan = ScopeBuilder.plan(
                settled(cause("LD01", "high-limit-switch", "outlet-switch"), cause("TM04", "high-limit-switch")),
                file(),
                shop,
                larkwell);

        assertThat(ids(plan.scopes().get(0))).containsExactly("R03");
        assertThat(plan.scopes().get(0).tasks().get(0).counts()).containsEntry(Per.PIECE, new BigDecimal("2"));
    }

    @Test
    void noScopeIsMadeWithoutADeviceToReplace() {
        var inputs = larkwell.adding(new AddedTask("R03", BigDecimal.ONE, "asked for"));

        assertThatThrownBy(() -> ScopeBuilder.plan(settled(cause("LD05")), file(), shop, inputs))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("device of task R03");
    }

    /** Nothing that the conditions of a remedy ask for by device, so that its last way counts. */
    private static String[] devices(Remedy remedy) {
        return remedy.cause().equals("LO02") ? new String[] {"water-pressure-switch"} : new String[0];
    }

    private PipeJob job(Length length) {
        return new PipeJob(
                "a",
                "",
                "steel-schedule-40",
                "1",
                "1",
                length,
                Map.of(),
                false,
                new PipeJob.Sizing("sized", "table"),
                "",
                List.of());
    }

    private static PipeJob line(String id, String size) {
        return new PipeJob(
                id,
                "",
                "steel-schedule-40",
                size,
                size,
                Length.ofFeet(84),
                Map.of("ell-90", 14),
                false,
                new PipeJob.Sizing("sized for " + size, "low-pressure equation"),
                size.equals("1") ? "what 1 leaves" : "",
                List.of());
    }

    private static List<String> ids(Scope scope) {
        return scope.tasks().stream().map(task -> task.task().id()).toList();
    }

    private static Set<String> numbers(Scope scope) {
        return quantities(scope).keySet();
    }

    private static Map<String, BigDecimal> quantities(Scope scope) {
        var quantities = new TreeMap<String, BigDecimal>();
        scope.tasks()
                .forEach(task -> task.parts()
                        .forEach(part -> quantities.merge(part.part().number(), part.quantity(), BigDecimal::add)));
        return quantities;
    }
}
