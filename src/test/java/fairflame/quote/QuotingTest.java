package fairflame.quote;

import static fairflame.quote.DemoQuotes.DAY;
import static fairflame.quote.DemoQuotes.SETTLED;
import static fairflame.quote.DemoQuotes.UNSETTLED;
import static fairflame.quote.DemoQuotes.plan;
import static fairflame.quote.DemoQuotes.quoting;
import static fairflame.quote.DemoQuotes.request;
import static fairflame.quote.DemoScopes.job;
import static fairflame.quote.DemoScopes.scope;
import static fairflame.quote.DemoShop.pct;
import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Task;
import fairflame.catalog.Trade;
import fairflame.diagnosis.Release;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class QuotingTest {
    private final Quote switches = DemoQuotes.switches();

    private static final PricingInputs NEAR = PricingInputs.inZone("near");

    @Test
    void twoChoicesOfTheFirstVisit() {
        assertThat(switches.repair()).isTrue();
        assertThat(switches.choices()).extracting(Choice::id).containsExactly("both", "one");
        assertThat(switches.choice("both").totals().total()).isEqualTo(usd("389.86"));
        assertThat(switches.choice("one").totals().total()).isEqualTo(usd("293.80"));
        assertThat(switches.choice("both").suggested()).isTrue();
        assertThat(switches.choice("one").leavesUnfixed()).isNotEmpty();
        assertThat(switches.validUntil()).isEqualTo(LocalDate.of(2026, 12, 20));
        assertThat(switches.assumed()).isEmpty();
        assertThat(switches.rules().tax()).isEqualTo(DemoShop.PARTS_725);
        assertThat(switches.choice("both").work()).singleElement().satisfies(work -> {
            assertThat(work.task()).isEqualTo("R03");
            assertThat(work.trades()).containsExactly(Trade.TECHNICIAN);
        });
        assertThatThrownBy(() -> switches.choice("all"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("both, one");
    }

    @Test
    void theSwitchesPrintTheirNotesAndNoGasNote() {
        var both = switches.notes(switches.choice("both"));
        assertThat(both)
                .extracting(Note::rule)
                .contains("N-LOCAL", "N-HIDDEN", "N-NOBYPASS", "N-WATER", "N-WATERSRC", "N-HOT", "N-CANCEL")
                .doesNotContain("N-PERMIT", "N-GASFIT", "N-SINGLE");
        assertThat(switches.choice("one").notes()).extracting(Note::rule).containsExactly("N-SINGLE");
        assertThat(switches.choice("both").notes()).isEmpty();
    }

    @Test
    void theLargerLinePrintsPermitAndGasFitterInTheBox() {
        var request = request();
        var named = new QuoteRequest(
                request.head(),
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                request.paper(),
                Optional.of(new LicensedPerson("Tove Lind", "GF-20417", Optional.of(DAY))),
                List.of(),
                List.of());
        var quote = quoting(named).repair(SETTLED, plan(DemoScopes.LARGER_LINE));
        assertThat(quote.notes())
                .filteredOn(Note::boxed)
                .extracting(Note::rule)
                .containsExactly("N-GASFIT", "N-PERMIT", "N-TEST");
        assertThat(quote.notes().get(0).boxed()).isTrue();
        assertThat(text(quote, "N-GASFIT")).contains("licensed gas fitter").contains("Tove Lind, licence GF-20417");
        assertThat(text(quote, "N-PERMIT")).contains("Demo City").contains("120.00 USD.");
        assertThat(quote.notes()).extracting(Note::rule).contains("N-UTIL", "N-CO");
        assertThat(quote.notes().get(0).because()).isEqualTo("gas work: R18");
    }

    @Test
    void aPermitThatHasToBeAskedForIsSaidAndNotCharged() {
        var quote = quoting(request())
                .repair(SETTLED, plan(scope("valve", true, "", List.of(job(DemoShop.R10)), Set.of())));
        assertThat(quote.choices().get(0).duties()).isEqualTo(new Duties(true, PermitNeed.ASK, false));
        assertThat(quote.choices().get(0).lines()).extracting(Line::kind).doesNotContain(LineKind.PERMIT_FEE);
        assertThat(text(quote, "N-PERMIT")).contains("120.00 USD, added only if the office asks for a permit");
        assertThat(text(quote, "N-GASFIT")).contains("given to you before the work starts");
    }

    @Test
    void gasWorkWithoutPermitStillPrintsTheFitterAndTheTest() {
        var quote = quoting(request(DemoShop.STRICT, NEAR))
                .repair(SETTLED, plan(scope("valve", true, "", List.of(job(DemoShop.R10)), Set.of())));
        assertThat(quote.notes()).filteredOn(Note::boxed).extracting(Note::rule).containsExactly("N-GASFIT", "N-TEST");
        assertThat(text(quote, "N-GASFIT")).contains("master gas installer");
    }

    @Test
    void whereOnlyTheFitterOpensATestTapTheNotePrints() {
        var taps = plan(scope("clean", true, "", List.of(job(DemoShop.R15)), Set.of()));
        assertThat(quoting(request())
                        .repair(SETTLED, taps)
                        .choices()
                        .get(0)
                        .duties()
                        .regulatedGas())
                .isFalse();
        assertThat(quoting(request(DemoShop.STRICT, NEAR))
                        .repair(SETTLED, taps)
                        .choices()
                        .get(0)
                        .duties()
                        .regulatedGas())
                .isTrue();
    }

    @Test
    void aPlaceMayReplaceWordsAndAddNotesButNotSilenceTheGasNotes() {
        var place = place(
                Map.of("N-PERMIT", "Two inspections in {place}.", "N-GASFIT", " ", "N-BAY", "Bay rule."), Set.of());
        var quote = quoting(request(place, NEAR)).repair(SETTLED, plan(DemoScopes.LARGER_LINE));
        assertThat(text(quote, "N-PERMIT")).isEqualTo("Two inspections in Demo City.");
        assertThat(text(quote, "N-GASFIT")).contains("licensed gas fitter");
        assertThat(text(quote, "N-BAY")).isEqualTo("Bay rule.");
    }

    @Test
    void anUnknownPlaceIsOwnedUpTo() {
        var place = place(Map.of(), Set.of("permits", "gasTest", "permitFee", "soil"));
        var quote = quoting(request(place, NEAR)).repair(SETTLED, plan(DemoScopes.LARGER_LINE));
        assertThat(quote.assumed())
                .containsExactly(
                        "Not checked for this place, the cautious rule is assumed (Demo City): pressure test of gas "
                                + "piping, permit fee, permits, soil.");
        assertThat(text(quote, "N-PERMIT")).contains("not known yet, charged as paid");
        assertThat(quote.rules().cancelAlways()).isTrue();
        assertThat(quote.notes()).extracting(Note::rule).contains("N-CANCEL");
        assertThat(quote.choices().get(0).lines())
                .filteredOn(line -> line.kind() == LineKind.PERMIT_FEE)
                .singleElement()
                .satisfies(line -> assertThat(line.basis().get(0).words()).contains("not known"));
    }

    @Test
    void theRightToCancelPrintsWhereItHolds() {
        // Upper Lake grants it for further sales only.
        var plain = quoting(request(DemoShop.STRICT, NEAR)).repair(SETTLED, plan(DemoScopes.BOTH));
        assertThat(plain.notes()).extracting(Note::rule).doesNotContain("N-CANCEL");
        var further = new PricingInputs(
                "near", Set.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of("both"));
        var sold = quoting(request(DemoShop.STRICT, further)).repair(SETTLED, plan(DemoScopes.BOTH));
        assertThat(sold.notes()).extracting(Note::rule).contains("N-CANCEL");
        assertThat(text(sold, "N-CANCEL")).contains("business day 5");
        assertThat(sold.choices().get(0).lines()).allMatch(Line::further);
    }

    @Test
    void anUnsettledFindingGivesADiagnosisOnly() {
        var quote = quoting(request()).diagnosisOnly(UNSETTLED);
        assertThat(quote.repair()).isFalse();
        assertThat(quote.choices()).singleElement().satisfies(choice -> {
            assertThat(choice.lines()).extracting(Line::kind).containsExactly(LineKind.DIAGNOSIS, LineKind.TRIP);
            assertThat(choice.plain())
                    .contains("Test the limit with lifted leads while warm")
                    .contains("It tells damp from gas.");
            assertThat(choice.totals().total()).isEqualTo(usd("209.00"));
            assertThat(choice.work()).isEmpty();
        });
        assertThat(quote.finding().headline()).contains("no repair is priced");
        assertThat(quote.finding().unknown())
                .containsExactly(
                        "Two readings tell different stories.",
                        "Next: Test the limit with lifted leads while warm. It tells damp from gas. (about 8 minutes)");
        assertThat(quote.finding().causes()).isEmpty();
        assertThat(quote.notes()).extracting(Note::rule).contains("N-LOCAL").doesNotContain("N-HIDDEN");
    }

    @Test
    void theFindingIsToldInPlainWords() {
        assertThat(switches.finding().headline()).isEqualTo("Plain words of LD01.");
        assertThat(switches.finding().causes()).containsExactly("title of LD01");
        assertThat(switches.finding().supports())
                .containsExactly(
                        "High limit reads 22 kilohm to its body.", "Valve voltage fell to 15.7 V before the flame.");
        assertThat(switches.finding().ruledOut()).containsExactly("title of GP01: The drop is 1.2 in w.c.");
    }

    @Test
    void dangerGivesNoQuote() {
        assertThatThrownBy(() -> quoting(request()).stopWork(DemoQuotes.STOP))
                .isInstanceOf(Refusal.StopWork.class)
                .hasMessageContaining("G1, Smell of gas");
    }

    private static final Release RELEASE = new Release("G3", "Tove Lind", "GF-20417", "blocked flue passages");

    private static QuoteRequest released(Release... releases) {
        var request = request();
        return new QuoteRequest(
                request.head(),
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                request.paper(),
                Optional.empty(),
                List.of(),
                List.of(releases));
    }

    private static void refusedDanger(QuoteRequest request, String words, Task... tasks) {
        var jobs = java.util.Arrays.stream(tasks).map(DemoScopes::job).toList();
        assertThatThrownBy(() -> quoting(request).repair(SETTLED, plan(scope("fuse", true, "", jobs, Set.of()))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining(words);
    }

    @Test
    void aFuseOrSootIsNotSoldWithoutItsCause() {
        refusedDanger(released(RELEASE), "task R16 'without the repair of its cause in scope fuse'", DemoShop.R16);
        refusedDanger(released(RELEASE), "beside one of R15, R25", DemoShop.R16, DemoShop.R00);
        refusedDanger(request(), "task R16 'no release'", DemoShop.R16, DemoShop.R15);
        refusedDanger(request(), "task R25 'cause not named'", DemoShop.R25);
    }

    @Test
    void aReleaseThatNamesTheCauseAllowsSootAndFuseTogether() {
        var scope = scope("soot", true, "", List.of(job(DemoShop.R25), job(DemoShop.R16)), Set.of());
        assertThat(quoting(released(RELEASE)).repair(SETTLED, plan(scope)).choices())
                .hasSize(1);
        var soot = scope("soot", true, "", List.of(job(DemoShop.R25)), Set.of());
        var two = new fairflame.diagnosis.Finding.Settled(
                List.of(DemoQuotes.WET_SWITCHES, DemoQuotes.WET_SWITCHES), SETTLED.candidates(), List.of());
        assertThat(quoting(request()).repair(two, plan(soot)).choices()).hasSize(1);
    }

    @Test
    void whereThereIsNothingToMendTheAdviceIsGivenAndOnlyTheDiagnosisCharged() {
        var quote = quoting(request())
                .repair(SETTLED, new fairflame.repair.RepairPlan(List.of(), List.of("The gas company has to look.")));
        assertThat(quote.repair()).isFalse();
        assertThat(quote.choices()).singleElement().satisfies(choice -> {
            assertThat(choice.plain()).endsWith("The gas company has to look.");
            assertThat(choice.totals().total()).isEqualTo(usd("209.00"));
        });
        assertThat(quote.finding().causes()).containsExactly("title of LD01");
    }

    private static void refused(String words, fairflame.repair.Scope... scopes) {
        assertThatThrownBy(() -> quoting(request()).repair(SETTLED, plan(scopes)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(words);
    }

    @Test
    void aPlanHasOneSuggestionAndDistinctScopesWithTasks() {
        refused("number of suggested scopes '0'", DemoScopes.ONE);
        refused("number of suggested scopes '2'", DemoScopes.BOTH, DemoScopes.CLEAN_SENSOR);
        refused("scope 'both'", DemoScopes.BOTH, DemoScopes.BOTH);
        refused("task in scope empty", scope("empty", true, "", List.of(), Set.of()));
    }

    @Test
    void whatTouchesNoChoiceIsRefused() {
        var haul = new ExtraLine(
                "lost", LineKind.DISPOSAL, "Haul", DemoShop.dec("1"), "each", usd("1.00"), false, "x", "demo");
        refusedWith(NEAR.with(List.of(haul)), "choice of line 'Haul' 'lost' is refused; allowed: both, one");
        refusedWith(
                NEAR.less(List.of(new LineDiscount("SW-999", Discount.ofPercent("a", pct("5"))))),
                "line to discount 'SW-999'");
        refusedWith(
                new PricingInputs(
                        "near", Set.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of("lost")),
                "choice sold further 'lost'");
        // A part that only one choice has may be discounted.
        var some = NEAR.less(List.of(new LineDiscount("SW-110", Discount.ofPercent("a", pct("5")))));
        assertThat(quoting(request(DemoShop.CITY, some))
                        .repair(SETTLED, plan(DemoScopes.BOTH, DemoScopes.ONE))
                        .choices())
                .hasSize(2);
    }

    private static void refusedWith(PricingInputs inputs, String words) {
        assertThatThrownBy(() ->
                        quoting(request(DemoShop.CITY, inputs)).repair(SETTLED, plan(DemoScopes.BOTH, DemoScopes.ONE)))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining(words);
    }

    @Test
    void anExpiredPriceListIsRefusedAndAShortOneShortensTheQuote() {
        assertThatThrownBy(() -> quoting(until(DAY.minusDays(1))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("expired on 2026-11-19");
        assertThat(quoting(until(DAY)).repair(SETTLED, plan(DemoScopes.BOTH)).validUntil())
                .isEqualTo(DAY);
        assertThat(quoting(until(DAY.plusYears(1)))
                        .repair(SETTLED, plan(DemoScopes.BOTH))
                        .validUntil())
                .isEqualTo(DAY.plusDays(30));
    }

    private static QuoteRequest until(LocalDate last) {
        var request = request();
        return new QuoteRequest(
                request.head(),
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                new QuoteRequest.Paper(DemoQuotes.NOTES, List.of(), List.of(), Optional.of(last)),
                Optional.empty(),
                List.of(),
                List.of());
    }

    @Test
    void aLicenceHasToHoldAndToBeWrittenAsThePlaceWritesIt() {
        assertThatThrownBy(() -> quoting(by(new LicensedPerson("T. Lind", "GF-20417", Optional.of(DAY.minusDays(1))))))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("expired on 2026-11-19");
        assertThatThrownBy(() -> quoting(by(new LicensedPerson("T. Lind", "20417", Optional.empty()))))
                .isInstanceOf(Refusal.Malformed.class)
                .hasMessageContaining("GF-\\d{5}");
        assertThatThrownBy(() -> new LicensedPerson(" ", "GF-20417", Optional.empty()))
                .isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> new LicensedPerson("T. Lind", "", Optional.empty()))
                .isInstanceOf(Refusal.Missing.class);
    }

    private static QuoteRequest by(LicensedPerson person) {
        var request = request();
        return new QuoteRequest(
                request.head(),
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                request.paper(),
                Optional.of(person),
                List.of(),
                List.of());
    }

    @Test
    void numberAndRevisionHaveToBeThere() {
        assertThatThrownBy(() -> quoting(headed(new QuoteRequest.Head(" ", 1, "V-1", DAY))))
                .isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> quoting(headed(new QuoteRequest.Head("Q-1", 0, "V-1", DAY))))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    private static QuoteRequest headed(QuoteRequest.Head head) {
        var request = request();
        return new QuoteRequest(
                head,
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                request.paper(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    @Test
    void aNoteThatMustPrintHasToBeInTheBook() {
        var request = request();
        var thin = new NoteBook(List.of(DemoQuotes.NOTES.notes().get(0)));
        var poor = new QuoteRequest(
                request.head(),
                request.people(),
                request.heater(),
                request.place(),
                request.inputs(),
                new QuoteRequest.Paper(thin, List.of(), List.of(), Optional.empty()),
                Optional.empty(),
                List.of(),
                List.of());
        assertThatThrownBy(() -> quoting(poor).repair(SETTLED, plan(DemoScopes.LARGER_LINE)))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("note that has to print 'N-PERMIT, N-TEST'");
        var asking = new Task(
                "R99",
                "t",
                "p",
                DemoShop.R06.times(),
                Set.of(),
                List.of(),
                Set.of(),
                Set.of(Trade.TECHNICIAN),
                "none",
                Set.of("N-LOST"),
                Set.of(),
                List.of(),
                "",
                "demo");
        refused("note that has to print 'N-LOST'", scope("v", true, "", List.of(job(asking)), Set.of()));
    }

    @Test
    void theOverrunOfThePlaceComesAlong() {
        assertThat(Places.rules(DemoShop.CITY).overrun()).isEqualTo(pct("0"));
        assertThat(Places.rules(withFact("10 percent")).overrun()).isEqualTo(pct("10"));
        assertThat(Places.rules(withFact("0 percent without consent")).overrun())
                .isEqualTo(pct("0"));
        assertThat(Places.rules(withFact("7.5 %")).overrun()).isEqualTo(pct("7.5"));
        assertThat(Places.rules(withFact("unknown")).overrun()).isEqualTo(pct("0"));
        assertThatThrownBy(() -> Places.rules(withFact("a little"))).isInstanceOf(Refusal.Malformed.class);
    }

    private static Jurisdiction withFact(String overrun) {
        return place(Map.of(), Set.of(), Map.of(Places.OVERRUN, overrun));
    }

    private static Jurisdiction place(Map<String, String> notes, Set<String> unknown) {
        return place(notes, unknown, Map.of());
    }

    private static Jurisdiction place(Map<String, String> notes, Set<String> unknown, Map<String, String> facts) {
        var city = DemoShop.CITY;
        return new Jurisdiction(
                city.id(),
                city.name(),
                city.codes(),
                city.permits(),
                city.permitFee(),
                city.permitFeeTaxed(),
                city.testTap(),
                city.gasLicence(),
                city.gasLicencePattern(),
                city.gasTest(),
                city.tax(),
                city.deposit(),
                30,
                3,
                false,
                facts,
                notes,
                unknown,
                "demo");
    }

    private static String text(Quote quote, String rule) {
        return quote.notes().stream()
                .filter(note -> note.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .text();
    }

    @Test
    void theStricterDutyCounts() {
        var gas = new Duties(true, PermitNeed.ASK, false);
        var pipe = new Duties(false, PermitNeed.YES, true);
        assertThat(gas.and(pipe)).isEqualTo(new Duties(true, PermitNeed.YES, true));
        assertThat(pipe.and(gas)).isEqualTo(new Duties(true, PermitNeed.YES, true));
        assertThat(Duties.NONE.and(gas)).isEqualTo(gas);
        assertThat(gas.and(Duties.NONE)).isEqualTo(gas);
        assertThat(Duties.NONE.and(Duties.NONE)).isEqualTo(Duties.NONE);
    }

    @Test
    void boxedNotesComeFirstAndNameOnlyTheGasWork() {
        var mixed = scope("mixed", true, "", List.of(job(DemoShop.R06), job(DemoShop.R10)), Set.of("N-CHEM"));
        var other = scope("other", false, "", List.of(job(DemoShop.R06)), Set.of());
        var quote = quoting(request()).repair(SETTLED, plan(mixed, other));
        var notes = quote.notes(quote.choice("mixed"));
        assertThat(notes.subList(0, 3)).extracting(Note::rule).containsExactly("N-GASFIT", "N-PERMIT", "N-TEST");
        assertThat(notes.subList(3, notes.size())).noneMatch(Note::boxed);
        assertThat(notes.get(0).because()).isEqualTo("gas work: R10");
        assertThat(notes.get(1).because()).isEqualTo("gas work: R10");
        assertThat(quote.notes(quote.choice("other"))).extracting(Note::rule).doesNotContain("N-GASFIT", "N-CHEM");
        assertThat(quote.choice("mixed").notes().get(0).boxed()).isTrue();
    }

    @Test
    void aPlaceWithoutARightToCancelPrintsNone() {
        var city = DemoShop.CITY;
        var none = new Jurisdiction(
                city.id(),
                city.name(),
                city.codes(),
                city.permits(),
                city.permitFee(),
                city.permitFeeTaxed(),
                city.testTap(),
                city.gasLicence(),
                city.gasLicencePattern(),
                city.gasTest(),
                city.tax(),
                city.deposit(),
                30,
                0,
                true,
                Map.of(),
                Map.of(),
                Set.of(),
                "demo");
        var quote = quoting(request(none, NEAR)).repair(SETTLED, plan(DemoScopes.BOTH));
        assertThat(quote.notes()).extracting(Note::rule).doesNotContain("N-CANCEL");
        assertThat(quote.rules().cancelAlways()).isTrue();
    }
}
