package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DangersTest {
    /** Readings that settle a cause by themselves; danger must win over them. */
    private static Visit proved() {
        return Visit.of("drops-out")
                .plate("minimum 4inwc", "maximum 10.5inwc")
                .read("leak-high-limit 20 kilohm", "leak-outlet 20 kilohm");
    }

    @Test
    void withoutDangerTheseReadingsSettle() {
        assertThat(proved().finding()).isInstanceOf(Finding.Settled.class);
    }

    @ParameterizedTest(name = "{1} opens {0}")
    @CsvSource(delimiter = '|', textBlock = """
        G1  | gas-smell yes
        G1  | gas-detector alarm
        G1  | joint-leak bubbles
        G2  | co-room 71 ppm
        G2  | co-alarm sounding
        G2  | people-unwell yes
        G3  | scorch outside-chamber
        G3  | rollout-fuse open
        G3  | thermal-fuse open
        G3  | wiring-look browned
        G3  | wiring-look melted
        G4  | shock-felt yes
        G4  | gfci trips-again
        G5  | flooded yes
        G5  | live-parts-water standing-water
        G6  | gas-static 10.6 inwc
        G6  | gas-firing 10.6 inwc
        G7  | bridge-found found
        G8  | co-flue 401 ppm
        G9  | burner-box wet
        G9  | banging boiling-or-banging
        G10 | manifold-idle 0.1 inwc
        G11 | transformer-idle 30.1 v
        G11 | transformer-low 30.1 v
        G11 | valve-low 30.1 v
        """)
    void aDangerousReadingOpensItsGateAlthoughTheAnswerWasNo(String gate, String reading) {
        var stop = Findings.stopWork(proved().read(reading).finding());

        assertThat(stop.dangers()).extracting(Finding.Danger::gate).containsExactly(gate);
        var danger = stop.dangers().get(0);
        assertThat(danger.found()).endsWith(".").doesNotContain("{");
        assertThat(danger.advice()).isNotEmpty();
        assertThat(danger.source()).isNotEmpty();
        assertThat(danger.title()).isNotEmpty();
        assertThat(stop.candidates()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "co-room 70 ppm",
                "gas-static 10.5 inwc",
                "gas-firing 10.5 inwc",
                "co-flue 400 ppm",
                "manifold-idle 0 inwc",
                "transformer-idle 30.0 v",
                "rollout-fuse closed",
                "rollout-fuse absent",
                "wiring-look loose",
                "gfci absent"
            })
    void aReadingAtTheLineOpensNothing(String reading) {
        assertThat(proved().read(reading).finding()).isNotInstanceOf(Finding.StopWork.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"G1", "G2", "G3", "G4", "G5", "G6", "G7", "G8", "G9"})
    void everyAskedGateStopsOnYesAndHoldsOnSilence(String gate) {
        var stop = Findings.stopWork(proved().gate(gate, GateAnswer.YES).finding());
        assertThat(stop.dangers()).extracting(Finding.Danger::gate).containsExactly(gate);
        assertThat(stop.dangers().get(0).found()).startsWith("Answered yes: ");

        var open = Findings.unsettled(proved().notAsked(gate).finding());
        assertThat(open.next().get(0).check()).isEqualTo(gate);

        assertThat(proved().gate(gate, GateAnswer.YES)
                        .released(gate, "the cause")
                        .finding())
                .isInstanceOf(Finding.Settled.class);
        assertThat(proved().notAsked(gate).released(gate, "the cause").finding())
                .isInstanceOf(Finding.Settled.class);
    }

    @Test
    void aToldOrDoubtedReadingOpensAGateToo() {
        assertThat(proved().read("gas-smell yes [told]").finding()).isInstanceOf(Finding.StopWork.class);
        assertThat(proved().read("co-flue 900 ppm [not-zeroed]").finding()).isInstanceOf(Finding.StopWork.class);
    }

    @Test
    void aLaterGoodReadingClearsNothing() {
        var visit = proved().read("co-room 200 ppm", "co-room 0 ppm", "gas-detector alarm", "gas-detector quiet");

        assertThat(Findings.stopWork(visit.finding()).dangers())
                .extracting(Finding.Danger::gate)
                .containsExactly("G1", "G2");
        assertThat(Findings.stopWork(visit.released("G1", "union remade").finding())
                        .dangers())
                .extracting(Finding.Danger::gate)
                .containsExactly("G2");
    }

    @Test
    void aReleaseNeedsNameLicenceAndCause() {
        assertThat(new Release("G1", "B. Fitter", "GF-1", "union").cause()).isEqualTo("union");
        assertThatThrownBy(() -> new Release("G1", " ", "GF-1", "union")).isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> new Release("G1", "B. Fitter", "", "union")).hasMessageContaining("licence number");
        assertThatThrownBy(() -> new Release("G1", "B. Fitter", "GF-1", "")).hasMessageContaining("cause");
        assertThatThrownBy(() -> new Release("", "B. Fitter", "GF-1", "x")).hasMessageContaining("gate");
    }

    @Test
    void aReleasedGasLeakIsRepairedUnderItsName() {
        var visit = Visit.of("leak").read("joint-leak bubbles");
        assertThat(visit.finding()).isInstanceOf(Finding.StopWork.class);

        var released = Findings.settled(visit.released("G1", "leaking union").finding());
        assertThat(released.causes()).extracting(Candidate::cause).containsExactly("LK01");
        assertThat(released.causes().get(0).restsOn())
                .isEqualTo("leak test of the joint; also the licensed person's release");
    }

    @Test
    void aReleaseNamesACauseOfAnotherComplaint() {
        var released = Findings.settled(Visit.of("weak-heat")
                .gate("G3", GateAnswer.YES)
                .released("G3", "SR02")
                .finding());

        assertThat(released.causes()).extracting(Candidate::cause).containsExactly("SR02");
        assertThat(released.causes().get(0).supports().get(0).words())
                .isEqualTo("Named in the release of gate G3 by B. Fitter, licence GF-00001.");
    }
}
