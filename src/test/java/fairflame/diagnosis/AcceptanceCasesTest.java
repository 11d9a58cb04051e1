package fairflame.diagnosis;

import static fairflame.diagnosis.Candidate.Standing.LIKELY;
import static fairflame.diagnosis.Candidate.Standing.RULED_OUT;
import static fairflame.diagnosis.Candidate.Standing.SETTLED;
import static fairflame.gas.Reconciliation.Verdict.DOES_NOT_EXPLAIN;
import static fairflame.gas.Reconciliation.Verdict.EXPLAINS;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.ReadingVerdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The ten invented cases that the shop agreed on: what must come out, and what must not. */
class AcceptanceCasesTest {
    private static Visit flagship() {
        return Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc", "maximum 14inwc")
                .read(
                        "seconds-to-drop-out 25 s",
                        "tries 6 times",
                        "worse-after-rain yes",
                        "gas-static 10.1 inwc [u-tube]",
                        "gas-firing 8.9 inwc [u-tube, furnace-on]",
                        "line-volts 121 v",
                        "transformer-idle 26.3 v",
                        "valve-low 15.7 v [minimum-hold]",
                        "transformer-low 21 v [minimum-hold]",
                        "first-to-fall volts",
                        "flame-signal 2.6 ua",
                        "leak-others over 20 megohm",
                        "common-to-chassis bonded");
    }

    private static Visit bothWet() {
        return flagship()
                .read(
                        "leak-high-limit 22 kilohm [leads-lifted]",
                        "leak-outlet 31 kilohm [leads-lifted]",
                        "contact-high-limit 6 ohm",
                        "contact-outlet 4 ohm",
                        "switch-bodies crust");
    }

    private static Visit smallPipe() {
        return Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 6inwc", "maximum 10.5inwc")
                .read(
                        "seconds-to-drop-out 6 s",
                        "heating-value 1030 btu/ft3",
                        "gas-static 10.2 inwc [fast-analogue]",
                        "gas-firing 3.9 inwc [fast-analogue]",
                        "gas-meter-firing 9.8 inwc [fast-analogue]",
                        "cock-handle parallel",
                        "gas-before-cock 4.0 inwc",
                        "gas-after-cock 4.0 inwc",
                        "valve-low 24.6 v [minimum-hold]",
                        "leak-high-limit over 20 megohm [warm]",
                        "leak-outlet over 20 megohm [warm]",
                        "clocked-flow 374 cfh");
    }

    private static Visit twoStories() {
        return Visit.of("drops-out")
                .plate("minimum 5inwc")
                .read(
                        "gas-static 10.0 inwc",
                        "gas-firing 6.8 inwc",
                        "valve-low 17.9 v [minimum-hold]",
                        "first-to-fall together",
                        "leak-high-limit 180 kilohm [cold]",
                        "leak-outlet over 20 megohm [cold]");
    }

    private static Visit soot() {
        return Visit.of("trips-after-minutes")
                .plate("minimum 4inwc")
                .read(
                        "soot dry",
                        "rollout-fuse open",
                        "wiring-look browned",
                        "valve-low 25 v [minimum-hold]",
                        "gas-static 9 inwc",
                        "gas-firing 8 inwc");
    }

    private static List<String> causes(Finding finding) {
        return Findings.settled(finding).causes().stream().map(Candidate::cause).toList();
    }

    private static List<String> next(Finding finding) {
        return Findings.unsettled(finding).next().stream()
                .map(each -> each.check()
                        + (each.conditions().isEmpty() ? "" : each.conditions().toString()))
                .toList();
    }

    private static Verdict verdict(Visit visit, String check) {
        return Diagnosis.verdicts(Visit.KNOWLEDGE, visit.file()).stream()
                .filter(each -> each.reading().check().equals(check))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    @Test
    @DisplayName("1. both water-side switches wet: settled on the lifted leads, gas, sensor and transformer cleared")
    void bothSwitchesWet() {
        var finding = bothWet().finding();

        assertThat(causes(finding)).containsExactly("LD01");
        var cause = Findings.candidate(finding, "LD01");
        assertThat(cause.restsOn()).startsWith("leak-to-ground readings of both switches with the leads lifted");
        assertThat(cause.repairs()).containsExactly("R03");
        assertThat(Findings.candidate(finding, "LD03").standing()).isEqualTo(RULED_OUT);
        assertThat(Findings.candidate(finding, "LD05").standing()).isEqualTo(RULED_OUT);
        assertThat(Findings.candidate(finding, "LD08").against()).isNotEmpty();
        assertThat(Findings.candidate(finding, "LD09").standing()).isNotIn(LIKELY, SETTLED);
        assertThat(verdict(bothWet(), "gas-firing")).isEqualTo(Verdict.GOOD);
        assertThat(verdict(bothWet(), "valve-low")).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    @DisplayName("2. gas line too small: the tables predict the dip, the meter holds")
    void pipeTooSmall() {
        var finding = smallPipe().pipe(EXPLAINS, 5.9, 5.8).finding();

        assertThat(causes(finding)).containsExactly("LD03");
        assertThat(Findings.candidate(finding, "LD03").repairs()).containsExactly("R18", "R19");
        assertThat(Findings.settled(finding).causes())
                .flatExtracting(Candidate::repairs)
                .doesNotContain("R10", "R44");
        assertThat(Findings.candidate(finding, "LD03M").standing()).isEqualTo(RULED_OUT);
        assertThat(Findings.candidate(finding, "LD04").standing()).isEqualTo(RULED_OUT);
    }

    @Test
    @DisplayName("2b. the same readings on larger pipe: the pipe is not to blame and nothing is sold")
    void pipeLargeEnough() {
        var finding = smallPipe().pipe(DOES_NOT_EXPLAIN, 5.9, 0.5).finding();

        assertThat(Findings.candidate(finding, "LD03").standing()).isEqualTo(RULED_OUT);
        assertThat(next(finding)).containsAnyOf("pipe-section", "connector", "inlet-screen", "gas-before-trap");
    }

    @Test
    @DisplayName("3. dirty flame sensor; a static pressure of 7 is no fault")
    void dirtySensor() {
        var visit = Visit.of("drops-out")
                .plate("minimum 4inwc")
                .read(
                        "seconds-to-drop-out 5 s",
                        "tries 3 times",
                        "gas-static 7.2 inwc",
                        "gas-firing 6.0 inwc",
                        "valve-low 25.1 v [minimum-hold]",
                        "flame-signal 0.6 ua [in-series]",
                        "flame-steadiness steady",
                        "flame-signal-cleaned 3.1 ua",
                        "cycles-after-cleaning 3 times",
                        "ground-resistance 0.4 ohm");

        assertThat(causes(visit.finding())).containsExactly("LD05");
        assertThat(Findings.candidate(visit.finding(), "LD05").repairs()).startsWith("R06");
        assertThat(verdict(visit, "gas-static")).isEqualTo(Verdict.GOOD);
    }

    @Test
    @DisplayName("4. smell of gas: stop, nothing asked, nothing named, no later reading clears it")
    void smellOfGas() {
        var visit = Visit.of("drops-out")
                .read("gas-smell yes", "gas-detector alarm", "valve-low 24 v", "flame-signal 0.5 ua");

        var stop = Findings.stopWork(visit.finding());
        assertThat(stop.dangers()).extracting(Finding.Danger::gate).containsExactly("G1");
        assertThat(stop.candidates()).isEmpty();
        assertThat(Findings.stopWork(visit.read("gas-detector quiet", "gas-smell no", "joint-leak none")
                                .finding())
                        .dangers())
                .hasSize(1);
        assertThat(visit.released("G1", "leaking union").finding()).isNotInstanceOf(Finding.StopWork.class);
    }

    @Test
    @DisplayName("5. two stories at once: not settled, and the next checks in their order")
    void contradictory() {
        var finding = twoStories().finding();

        assertThat(Findings.candidate(finding, "LD02").standing()).isEqualTo(LIKELY);
        assertThat(next(finding))
                .startsWith("leak-high-limit[warm]", "leak-outlet[warm]", "gas-meter-firing", "valve-low-igniter-off");
        assertThat(Findings.unsettled(finding).next().get(0).minutes()).isEqualTo(8);
        assertThat(Findings.unsettled(finding).next().get(2).minutes()).isEqualTo(10);
        assertThat(finding.conflicts()).anyMatch(words -> words.contains("same second"));
    }

    @Test
    @DisplayName("5b. a warm leak and a reading with the house idle: the furnace-on reading has to be repeated")
    void stillContradictory() {
        var finding = twoStories()
                .read("leak-high-limit 19 kilohm [warm]", "gas-firing 8.8 inwc [heater-alone]")
                .finding();

        assertThat(next(finding).get(0)).isEqualTo("gas-firing[furnace-on]");
        assertThat(Findings.unsettled(finding).next().get(0).instrument()).doesNotContain("slow");
    }

    @Test
    @DisplayName("5c. once that is good and the other switch dry warm, the one wet switch settles")
    void contradictionResolved() {
        var finding = twoStories()
                .read(
                        "leak-high-limit 19 kilohm [warm]",
                        "leak-outlet over 20 megohm [warm]",
                        "gas-firing 8.8 inwc [u-tube, furnace-on]")
                .finding();

        assertThat(causes(finding)).containsExactly("LD02");
    }

    @Test
    @DisplayName("6. one switch wet, the other dry cold and warm: the one is named")
    void oneSwitchWet() {
        var finding = flagship()
                .read(
                        "leak-high-limit 18 kilohm [cold, warm, leads-lifted]",
                        "leak-outlet over 20 megohm [cold, warm, leads-lifted]",
                        "contact-outlet 0.2 ohm",
                        "switch-age 3 years",
                        "water-source sealed")
                .finding();

        assertThat(causes(finding)).containsExactly("LD02");
        assertThat(Findings.candidate(finding, "LD02").devices()).containsExactly("high-limit-switch");
    }

    @Test
    @DisplayName("7. gauge too slow: not settled, gas not cleared, a fast gauge next")
    void slowGauge() {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 6.5inwc")
                .read(
                        "seconds-to-drop-out 4 s",
                        "gas-static 10.0 inwc [slow-digital]",
                        "gas-firing 10.0 inwc [slow-digital]",
                        "valve-low 25.3 v [minimum-hold]",
                        "flame-signal 2.8 ua",
                        "leak-high-limit over 20 megohm [warm]",
                        "leak-outlet over 20 megohm [warm]");

        var finding = visit.finding();
        assertThat(Findings.candidate(finding, "LD03").standing()).isNotEqualTo(RULED_OUT);
        assertThat(Findings.candidate(finding, "LD03").against()).isEmpty();
        assertThat(verdict(visit, "gas-firing")).isEqualTo(Verdict.DOUBTED);
        var first = Findings.unsettled(finding).next().get(0);
        assertThat(first.check()).isEqualTo("gas-firing");
        assertThat(first.conditions()).containsExactly("furnace-on");
        assertThat(first.minutes()).isEqualTo(5);
        assertThat(first.instrument()).contains("U-tube", "analogue").doesNotContain("slow");

        var after = visit.read("gas-firing 6.3 inwc [u-tube, furnace-on]").finding();
        assertThat(next(after).get(0)).isEqualTo("gas-meter-firing");
        assertThat(Findings.candidate(after, "LD03").standing()).isEqualTo(LIKELY);
    }

    @Test
    @DisplayName("8. soot and an open rollout fuse: stop; after a release the fuse only with its cause")
    void rollout() {
        assertThat(Findings.stopWork(soot().finding()).dangers())
                .extracting(Finding.Danger::gate)
                .containsExactly("G3");

        var released = soot().released("G3", "blocked flue passages").finding();
        assertThat(causes(released)).containsExactlyInAnyOrder("SR03", "SR06");
        assertThat(Findings.candidate(released, "SR03").repairs()).containsExactly("R25");
        assertThat(Findings.candidate(released, "SR06").repairs()).containsExactly("R16");

        var causeUnknown = soot().released("G3", "not yet clear").finding();
        assertThat(Findings.candidate(causeUnknown, "SR06").standing()).isEqualTo(LIKELY);
        assertThat(causeUnknown).isInstanceOf(Finding.Unsettled.class);
    }

    @Test
    @DisplayName("9. weak heat, the meter itself falls: the utility, no pipe")
    void meterTooSmall() {
        var finding = Visit.of("weak-heat")
                .plate("input 400000btu/h", "minimum 4inwc", "maximum 14inwc", "efficiency 82")
                .read(
                        "gas-static 7.0 inwc",
                        "gas-firing 4.2 inwc [heater-alone]",
                        "gas-firing 3.4 inwc [furnace-on]",
                        "gas-meter-firing 4.3 inwc [heater-alone]",
                        "gas-meter-firing 3.6 inwc [furnace-on]",
                        "clocked-input 292000 btu/h",
                        "water-rise 7 f",
                        "water-flow 65 gpm",
                        "load-sum 610000 btu/h",
                        "meter-rating 425 cfh")
                .finding();

        assertThat(causes(finding)).containsExactly("LD03M");
        assertThat(Findings.candidate(finding, "LD03M").repairs()).containsExactly("R20u");
        assertThat(Findings.candidate(finding, "LD03").standing()).isEqualTo(RULED_OUT);
    }

    @Test
    @DisplayName("10. the limit trips from low flow and does its duty")
    void lowFlow() {
        var finding = Visit.of("trips-after-minutes")
                .plate("input 400000btu/h", "minimum 4inwc", "rise 15")
                .read(
                        "seconds-to-drop-out 420 s",
                        "resets-as-it-cools yes",
                        "filter-pressure 28 psi",
                        "filter-clean-pressure 12 psi",
                        "water-rise 23 f",
                        "header-at-trip 136 f",
                        "valve-low 25 v [minimum-hold]",
                        "leak-high-limit over 20 megohm [warm]",
                        "leak-outlet over 20 megohm [warm]",
                        "gas-static 9.5 inwc",
                        "gas-firing 8.5 inwc")
                .finding();

        assertThat(causes(finding)).containsExactly("TM01");
        assertThat(Findings.candidate(finding, "TM01").repairs()).containsExactly("R40", "R00");
        assertThat(Findings.candidate(finding, "TM04").standing()).isEqualTo(RULED_OUT);
        assertThat(Findings.candidate(finding, "LD01").standing()).isEqualTo(RULED_OUT);
    }
}
