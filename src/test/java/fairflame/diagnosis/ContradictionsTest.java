package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.gas.Reconciliation.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContradictionsTest {
    private static List<String> conflicts(Visit visit) {
        return visit.finding().conflicts();
    }

    private static Visit wet() {
        return Visit.of("drops-out")
                .plate("minimum 4inwc", "input 400000btu/h")
                .read("leak-high-limit 20 kilohm", "leak-outlet 20 kilohm");
    }

    @Test
    void pressureThatDoesNotMoveIsTheInstrument() {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc")
                .read("gas-static 10 inwc [slow-digital]", "gas-firing 9.9 inwc [slow-digital]");

        assertThat(conflicts(visit)).anyMatch(words -> words.contains("equals the static pressure"));
    }

    @Test
    void firingAboveStaticIsAskedAgain() {
        var visit = Visit.of("drops-out").plate("minimum 4inwc").read("gas-static 8 inwc", "gas-firing 8.3 inwc");

        assertThat(conflicts(visit)).anyMatch(words -> words.contains("above the static 8 in w.c."));
        assertThat(Findings.unsettled(visit.finding()).next())
                .extracting(NextCheck::check)
                .startsWith("gas-static", "gas-firing");
        assertThat(conflicts(
                        Visit.of("drops-out").plate("minimum 4inwc").read("gas-static 8 inwc", "gas-firing 8.2 inwc")))
                .noneMatch(words -> words.contains("above the static"));
    }

    @Test
    void lowLineVoltageComesBeforeTheSwitches() {
        var visit = wet().read("valve-low 17 v", "line-volts 104 v", "line-rating 120 v");

        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(conflicts(visit)).anyMatch(words -> words.contains("the supply comes first"));
        assertThat(wet().read("valve-low 17 v", "line-volts 109 v", "line-rating 120 v")
                        .finding())
                .isInstanceOf(Finding.Settled.class);
    }

    @Test
    void lowLineVoltageIsToldFrom208And240() {
        assertThat(wet().read("valve-low 17 v", "line-volts 208 v").finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(wet().read("valve-low 17 v", "line-volts 208 v", "line-rating 208 v")
                        .finding())
                .isInstanceOf(Finding.Settled.class);
        assertThat(wet().read("valve-low 17 v", "line-volts 121 v").finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void sagAndDipInTheSameSecondSettleNothing() {
        var visit = wet().read("valve-low 17 v", "first-to-fall together");

        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(wet().read("valve-low 17 v", "first-to-fall volts").finding())
                .isInstanceOf(Finding.Settled.class);
    }

    @Test
    void sagAndDipWithoutAnOrderAskWhichComesFirst() {
        var visit = wet().read("valve-low 17 v", "gas-static 10 inwc", "gas-firing 6 inwc");

        assertThat(Findings.unsettled(visit.finding()).next().get(0).check()).isEqualTo("first-to-fall");
        assertThat(visit.read("first-to-fall volts").finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void bothDryColdAndASagAskForTheWarmTest() {
        var visit = Visit.of("drops-out")
                .read("leak-high-limit over 20 megohm [cold]", "leak-outlet over 20 megohm [cold]", "valve-low 18 v");

        assertThat(Findings.unsettled(visit.finding()).next())
                .extracting(next -> next.check() + next.conditions())
                .startsWith("leak-high-limit[warm]", "leak-outlet[warm]");
    }

    @Test
    void inputRightAndDropWrongIsAskedAgain() {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc")
                .read(
                        "gas-static 10 inwc",
                        "gas-firing 6.5 inwc",
                        "clocked-input 398000 btu/h",
                        "cock-handle angled",
                        "gas-before-cock 9 inwc",
                        "gas-after-cock 6.6 inwc");

        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(conflicts(visit)).anyMatch(words -> words.contains("one of the two is wrong"));
        assertThat(visit.read("gas-meter-firing 9.2 inwc").finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void theComputedPipeResolvesThatContradiction() {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc")
                .read("gas-static 10 inwc", "gas-firing 6.5 inwc", "clocked-input 398000 btu/h")
                .pipe(Verdict.EXPLAINS, 3.5, 3.4);

        assertThat(visit.finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void twoWaysToTheInputHaveToAgree() {
        var visit = Visit.of("weak-heat")
                .plate("input 400000btu/h", "efficiency 80", "rise 30")
                .read("clocked-input 400000 btu/h", "heat-up as-computed", "water-rise 6 f", "water-flow 50 gpm");

        assertThat(visit.finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(conflicts(visit)).anyMatch(words -> words.contains("53.1 % apart"));
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', textBlock = """
        drops-out | flame-signal 2 ua; fault-code flame         | was it read in series
        no-flame  | tries 2 times                               | never a third try blind
        weak-heat | co-flue 100 ppm                             | the cause is found before the heater is left on
        drops-out | common-to-chassis floating; valve-low 17 v  | one leak to ground alone draws nothing
        drops-out | gas-firing 7 inwc                           | without it no gas pressure passes
        drops-out | leak-outlet 5 ohm [leads-on]                | Lift both leads
        drops-out | leak-high-limit 5 ohm [leads-on]            | Lift both leads
        drops-out | valve-low 25 v [idle]                       | only under load
        drops-out | valve-low 25 v [direct-range]               | the control circuit is alternating
        drops-out | flame-signal 2 ua [in-parallel]             | in series
        drops-out | flame-signal 2 ua [at-light-off]            | settles within two minutes
        drops-out | flame-signal -0.5 ua                        | the leads are turned
        weak-heat | water-rise -4 f                             | the probes are swapped
        weak-heat | clocked-input 300000 btu/h [others-running] | their gas is counted too
        weak-heat | co-flue 20 ppm [not-zeroed]                 | not zeroed outdoors
        drops-out | bypass-pair stays-lit; bypass-seconds 90 s  | proves nothing more
        drops-out | gas-firing 8 inwc; gas-meter-firing 7.6 inwc | gas does not flow uphill
        """)
    void whatCannotBeTakenAtItsWordIsSaid(String complaint, String readings, String words) {
        var visit = Visit.of(complaint).read(readings.split("; "));

        assertThat(conflicts(visit)).anyMatch(each -> each.contains(words));
    }

    @Test
    void aDoubtedReadingNeitherProvesNorRulesOut() {
        var leadsOn = Visit.of("drops-out").read("leak-high-limit 20 ohm [leads-on]", "leak-outlet 20 ohm [leads-on]");
        assertThat(leadsOn.finding()).isInstanceOf(Finding.Unsettled.class);
        assertThat(Findings.candidate(leadsOn.finding(), "LD01").supports()).isNotEmpty();
        assertThat(Findings.candidate(leadsOn.finding(), "LD01").missing()).contains("leak-high-limit", "leak-outlet");

        var early = Visit.of("drops-out").read("flame-signal 2 ua [at-light-off]");
        assertThat(Findings.candidate(early.finding(), "LD05").standing()).isEqualTo(Candidate.Standing.OPEN);
        var late = Visit.of("drops-out").read("flame-signal 2 ua");
        assertThat(Findings.candidate(late.finding(), "LD05").standing()).isEqualTo(Candidate.Standing.RULED_OUT);
    }

    @Test
    void readingsOfDifferentLoadsAreNeverCompared() {
        var visit = Visit.of("weak-heat")
                .plate("minimum 4inwc")
                .read(
                        "gas-static 7 inwc",
                        "gas-firing 3.4 inwc [furnace-on]",
                        "gas-meter-firing 4.3 inwc [heater-alone]");

        assertThat(Findings.candidate(visit.finding(), "LD03M").standing()).isNotEqualTo(Candidate.Standing.SETTLED);
        assertThat(visit.read("gas-meter-firing 3.6 inwc [furnace-on]").finding())
                .isInstanceOf(Finding.Settled.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        co-flue 100 ppm  | co-flue 99 ppm            | vent-look
        co-room 10 ppm   | co-room 9 ppm             | co-flue
        soot dry         | soot dry; co-flue 40 ppm  | co-flue
        soot wet         | soot wet; exchanger-look clean | exchanger-look
        """)
    void nothingElseIsSoldWhileCarbonMonoxideOrSootIsUnexplained(String raised, String calm, String next) {
        assertThat(wet().finding()).isInstanceOf(Finding.Settled.class);

        var open = wet().read(raised);
        assertThat(Findings.candidate(Findings.unsettled(open.finding()), "LD01")
                        .standing())
                .isNotEqualTo(Candidate.Standing.SETTLED);
        assertThat(Findings.unsettled(open.finding()).next())
                .extracting(NextCheck::check)
                .contains(next);

        assertThat(wet().read(calm.split("; ")).finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void theCauseOfTheCarbonMonoxideIsNotHeldBackByIt() {
        var visit = Visit.of("trips-after-minutes")
                .read("co-flue 250 ppm", "soot dry", "vent-look blocked", "draught-check low");

        assertThat(Findings.candidate(visit.finding(), "SR02").standing()).isEqualTo(Candidate.Standing.SETTLED);
    }
}
