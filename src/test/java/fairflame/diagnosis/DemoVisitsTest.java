package fairflame.diagnosis;

import static fairflame.gas.Reconciliation.Verdict.DOES_NOT_EXPLAIN;
import static fairflame.gas.Reconciliation.Verdict.EXPLAINS;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DemoVisitsTest {
    private static Visit goodGas() {
        return Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc", "maximum 14inwc")
                .read("gas-static 10 inwc [fast-analogue]", "gas-firing 9 inwc [fast-analogue]");
    }

    private static Visit dipOfFour() {
        return Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc", "maximum 14inwc")
                .read("gas-static 10 inwc [fast-analogue]", "gas-firing 6 inwc [fast-analogue]");
    }

    @Test
    void aBypassThatKeepsTheBurnerLitNamesThePair() {
        var finding = goodGas()
                .read("bypass-pair stays-lit")
                .lead("high-limit-switch", true)
                .lead("outlet-switch", true)
                .finding();

        var settled = Findings.settled(finding);
        assertThat(settled.causes()).extracting(Candidate::cause).containsExactly("LD01");
        var cause = settled.causes().get(0);
        assertThat(cause.devices()).containsExactly("high-limit-switch", "outlet-switch");
        assertThat(cause.repairs()).containsExactly("R03");
        assertThat(cause.restsOn()).isEqualTo("momentary bypass after which the burner stayed lit");
    }

    @Test
    void aDipThatThePipeTablesPredictIsThePipe() {
        var settled = Findings.settled(dipOfFour().pipe(EXPLAINS, 4.0, 3.9).finding());

        assertThat(settled.causes()).extracting(Candidate::cause).containsExactly("LD03");
        assertThat(settled.causes().get(0).repairs()).containsExactly("R18", "R19");
    }

    @Test
    void aDipThatThePipeTablesDoNotPredictSellsNoPipe() {
        var finding = dipOfFour().pipe(DOES_NOT_EXPLAIN, 4.0, 0.4).finding();

        assertThat(Findings.unsettled(finding).candidates())
                .filteredOn(candidate -> candidate.cause().equals("LD03"))
                .extracting(Candidate::standing)
                .containsExactly(Candidate.Standing.RULED_OUT);
    }

    @Test
    void aDipWithoutAnythingElseAsksForTheMeterAndTheLayout() {
        var unsettled = Findings.unsettled(dipOfFour().finding());

        assertThat(unsettled.next()).extracting(NextCheck::check).startsWith("gas-meter-firing", "pipe-layout");
    }

    @Test
    void aSmellOfGasStopsEverything() {
        var finding = goodGas()
                .gate("G1", GateAnswer.YES)
                .read("bypass-pair stays-lit")
                .finding();

        var stop = Findings.stopWork(finding);
        assertThat(stop.dangers()).extracting(Finding.Danger::gate).containsExactly("G1");
        assertThat(stop.candidates()).isEmpty();
    }

    @Test
    void aLeadThatIsStillPlacedKeepsTheFindingOpen() {
        var finding = goodGas()
                .read("bypass-pair stays-lit")
                .lead("high-limit-switch", false)
                .lead("outlet-switch", true)
                .finding();

        assertThat(Findings.unsettled(finding).next().get(0).check()).isEqualTo("bypass-lead-off");
    }

    @Test
    void nothingMeasuredIsNotSettled() {
        assertThat(Findings.unsettled(Visit.of("drops-out").finding()).next()).isNotEmpty();
    }
}
