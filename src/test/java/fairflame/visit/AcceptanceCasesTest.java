package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.NextCheck;
import fairflame.money.Amounts;
import fairflame.quote.Choice;
import org.junit.jupiter.api.Test;

/**
 * Ten cases of the trade from readings to printed cents. The cases and their money are invented; the hours are sums of
 * standard times invented for the demo, worked by hand beside each figure.
 */
class AcceptanceCasesTest {
    private static Pad bothWet() {
        return Pad.complaint("drops-out")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "4 inwc")
                .plate("inletMaximum", "14 inwc")
                .age(7)
                .read(
                        "seconds-to-drop-out 25 s",
                        "tries 6 times",
                        "worse-after-rain yes",
                        "switch-bodies crust",
                        "gas-static 10.1 inwc [u-tube; idle]",
                        "gas-firing 8.9 inwc [u-tube; firing, furnace-on]",
                        "line-volts 121 v",
                        "line-rating 120 v",
                        "transformer-idle 26.3 v [multimeter; idle]",
                        "transformer-low 21 v [multimeter-minimum-hold; minimum-hold]",
                        "valve-low 15.7 v [multimeter-minimum-hold; minimum-hold]",
                        "first-to-fall volts",
                        "flame-signal 2.6 ua [microammeter; in-series, after-two-minutes]",
                        "leak-high-limit 22 kilohm [ohmmeter; warm, leads-lifted]",
                        "leak-outlet 31 kilohm [ohmmeter; warm, leads-lifted]",
                        "leak-others open [ohmmeter; leads-lifted]",
                        "contact-high-limit 6 ohm [ohmmeter; leads-lifted]",
                        "contact-outlet 4 ohm [ohmmeter; leads-lifted]",
                        "common-to-chassis bonded");
    }

    @Test
    void caseOneBothWaterSideSwitchesWet() {
        var pad = bothWet();
        var settled = pad.settled();
        assertThat(settled.causes()).extracting(Candidate::cause).containsExactly("LD01");
        assertThat(settled.candidates())
                .filteredOn(each -> each.standing() == Candidate.Standing.RULED_OUT)
                .extracting(Candidate::cause)
                .contains("LD03", "LD05");

        var quote = pad.quote();
        var both = quote.choice("both");
        // own 2 x 0.30, access ELEC 0.10 + PANEL 0.15 + DRAIN 0.25 + RUN 0.25, each once
        assertThat(both.hours()).isEqualByComparingTo("1.35");
        // 195.75 labour + 96.00 switches + 2.00 tape + 89.00 trip + tax 98.00 x 7.25 % = 7.105 -> 7.11
        assertThat(total(both)).isEqualTo("389.86");
        assertThat(both.tests()).containsExactly("B", "D", "E", "H");
        assertThat(Pad.work(both)).containsOnly("R03").doesNotContain("R08", "R10", "R18");
        assertThat(Pad.notes(quote, both))
                .contains("N-NOBYPASS", "N-WATER", "N-WATERSRC", "N-HOT", "N-LOCAL", "N-HIDDEN")
                .doesNotContain("N-GASFIT", "N-PERMIT");
    }

    private static Pad shortOfGas(String size) {
        return Pad.complaint("drops-out")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "6 inwc")
                .plate("inletMaximum", "10.5 inwc")
                .read(
                        "seconds-to-drop-out 6 s",
                        "gas-static 10.2 inwc [fast-analogue; idle]",
                        "gas-firing 3.9 inwc [fast-analogue; firing]",
                        "gas-meter-firing 9.8 inwc [fast-analogue; firing]",
                        "cock-handle parallel",
                        "gas-before-cock 4.0 inwc [fast-analogue; firing]",
                        "gas-after-cock 4.0 inwc [fast-analogue; firing]",
                        "valve-low 24.6 v [multimeter-minimum-hold; minimum-hold]",
                        "leak-high-limit 20 megohm [ohmmeter; warm, leads-lifted]",
                        "leak-outlet 20 megohm [ohmmeter; warm, leads-lifted]",
                        "clocked-flow 374 cfh",
                        "heating-value 1030 btu/ft3",
                        "pipe-layout entered")
                // 12 ells of 2.06 ft and 2 unions: about 109 ft in all
                .line("10.2inwc", "9.8inwc", size, "84ft", 12, "6inwc", "10.5inwc");
    }

    @Test
    void caseTwoGasLineTooSmall() {
        var pad = shortOfGas("3/4");
        assertThat(pad.settled().causes()).extracting(Candidate::cause).containsExactly("LD03");
        assertThat(pad.examined().file().pipe().orElseThrow().predicted().inchesWater())
                .isBetween(5.5, 6.1);

        var quote = pad.quote();
        var larger = quote.choice("larger-line");
        assertThat(larger.lines())
                .anySatisfy(line -> assertThat(line.description()).contains("1-1/4 in, by the foot"));
        // own 84 x 0.12 + 14 x 0.15 = 12.18; GAS 0.25 + GASTEST 0.75 + RUN 0.25 + ANALYSE 0.25; 13.68 rounded up once
        assertThat(larger.hours()).isEqualByComparingTo("13.70");
        assertThat(larger.lines())
                .filteredOn(line -> line.kind().word().equals("labour"))
                .singleElement()
                .satisfies(line -> assertThat(Amounts.plain(line.net())).isEqualTo("1986.50"));
        assertThat(larger.tests()).contains("A", "P", "C", "K", "G");
        assertThat(Pad.notes(quote, larger)).contains("N-GASFIT", "N-PERMIT", "N-TEST", "N-UTIL", "N-CO");
        assertThat(larger.lines())
                .filteredOn(line -> line.kind().word().equals("permit-fee"))
                .singleElement()
                .satisfies(line -> assertThat(Amounts.plain(line.net())).isEqualTo("120.00"));
        assertThat(quote.choices())
                .allSatisfy(choice -> assertThat(Pad.work(choice)).doesNotContain("R10"));
    }

    @Test
    void caseTwoOnALargerPipeSellsNothing() {
        var finding = shortOfGas("1-1/4").unsettled();
        assertThat(finding.candidates())
                .filteredOn(each -> each.cause().equals("LD03"))
                .extracting(Candidate::standing)
                .containsExactly(Candidate.Standing.RULED_OUT);
        assertThat(shortOfGas("1-1/4").quote().repair()).isFalse();
    }

    @Test
    void caseThreeDirtyFlameSensor() {
        var pad = Pad.complaint("drops-out")
                .plate("inletMinimum", "4 inwc")
                .plate("inletMaximum", "14 inwc")
                .plate("flameMinimum", "1.5 ua")
                .read(
                        "seconds-to-drop-out 5 s",
                        "tries 3 times",
                        "gas-static 7.2 inwc [u-tube; idle]",
                        "gas-firing 6.0 inwc [u-tube; firing, furnace-on]",
                        "valve-low 25.1 v [multimeter-minimum-hold; minimum-hold]",
                        "flame-signal 0.6 ua [microammeter; in-series, after-two-minutes]",
                        "flame-signal-cleaned 3.1 ua [microammeter; in-series, after-two-minutes]",
                        "ground-resistance 0.4 ohm");
        assertThat(pad.settled().causes()).extracting(Candidate::cause).containsExactly("LD05");
        var quote = pad.quote();
        var choice = quote.choices().get(0);
        assertThat(Pad.work(choice)).containsExactly("R06");
        // own 0.15 + ELEC 0.10 + PANEL 0.15 + RUN 0.25
        assertThat(choice.hours()).isEqualByComparingTo("0.65");
        // 94.25 + minimum adjustment 50.75 + trip 89.00
        assertThat(total(choice)).isEqualTo("234.00");
    }

    @Test
    void caseFourSmellOfGas() {
        var pad = Pad.complaint("drops-out")
                .gate("G1", "yes")
                .read(
                        "gas-detector alarm",
                        "valve-low 24 v [multimeter-minimum-hold; minimum-hold]",
                        "flame-signal 0.5 ua [microammeter; in-series, after-two-minutes]");
        assertThat(pad.stopped().dangers()).extracting(Finding.Danger::gate).containsExactly("G1");
        assertThatThrownBy(pad::quote).isInstanceOf(Refusal.StopWork.class);
        // A later good reading clears nothing.
        assertThat(pad.read("gas-detector quiet", "gas-smell no").stopped().dangers())
                .isNotEmpty();
    }

    private static Pad twoStories() {
        return Pad.complaint("drops-out")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "5 inwc")
                .plate("inletMaximum", "10.5 inwc")
                .read(
                        "gas-static 10.0 inwc [fast-analogue; idle]",
                        "gas-firing 6.8 inwc [fast-analogue; firing]",
                        "valve-low 17.9 v [multimeter-minimum-hold; minimum-hold]",
                        "first-to-fall together",
                        "leak-high-limit 180 kilohm [ohmmeter; cold, leads-lifted]",
                        "leak-outlet 20 megohm [ohmmeter; cold, leads-lifted]");
    }

    @Test
    void caseFiveTwoStoriesAtOnce() {
        var finding = twoStories().unsettled();
        assertThat(finding.next()).extracting(NextCheck::check).startsWith("leak-high-limit");
        assertThat(finding.next()).extracting(NextCheck::check).contains("gas-meter-firing", "valve-low-igniter-off");
        assertThat(finding.conflicts()).isNotEmpty();
        var quote = twoStories().quote();
        assertThat(quote.repair()).isFalse();
        assertThat(quote.choices())
                .singleElement()
                .satisfies(choice -> assertThat(choice.work()).isEmpty());

        var later = twoStories()
                .read(
                        "leak-high-limit 19 kilohm [ohmmeter; warm, leads-lifted]",
                        "gas-firing 8.8 inwc [slow-digital; firing, heater-alone]");
        java.util.List<String> settled = later.examined()
                .finding()
                .match(
                        found -> found.causes().stream().map(Candidate::cause).toList(),
                        unsettled -> java.util.List.of(),
                        danger -> java.util.List.of());
        assertThat(settled).doesNotContain("LD03");
    }

    @Test
    void caseSixOneSwitchWetAndThePairDeclined() {
        var pad = Pad.complaint("drops-out")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "4 inwc")
                .plate("inletMaximum", "14 inwc")
                .age(3)
                .partYears(3)
                .facts("water-stopped")
                .read(
                        "gas-static 10.1 inwc [u-tube; idle]",
                        "gas-firing 8.9 inwc [u-tube; firing, furnace-on]",
                        "line-volts 121 v",
                        "line-rating 120 v",
                        "valve-low 15.7 v [multimeter-minimum-hold; minimum-hold]",
                        "first-to-fall volts",
                        "flame-signal 2.6 ua [microammeter; in-series, after-two-minutes]",
                        "leak-high-limit 18 kilohm [ohmmeter; cold, leads-lifted]",
                        "leak-high-limit 18 kilohm [ohmmeter; warm, leads-lifted]",
                        "leak-outlet 20 megohm [ohmmeter; cold, leads-lifted]",
                        "leak-outlet 20 megohm [ohmmeter; warm, leads-lifted]",
                        "contact-outlet 0.2 ohm [ohmmeter; leads-lifted]",
                        "water-source sealed",
                        "common-to-chassis bonded");
        assertThat(pad.settled().causes()).extracting(Candidate::cause).containsExactly("LD02");
        var quote = pad.quote();
        var one = quote.choice("one");
        // own 0.30, access 0.75
        assertThat(one.hours()).isEqualByComparingTo("1.05");
        // 152.25 + 48.00 + 1.00 + 89.00 + tax 49.00 x 7.25 % = 3.5525 -> 3.55
        assertThat(total(one)).isEqualTo("293.80");
        assertThat(total(quote.choice("both"))).isEqualTo("389.86");
        assertThat(one.suggested()).isTrue();
        assertThat(one.arithmetic().toString()).contains("0.316");
        assertThat(Pad.notes(quote, one)).contains("N-SINGLE", "N-WATERSRC", "N-WATER", "N-NOBYPASS", "N-HOT");
    }

    @Test
    void caseSevenGaugeTooSlow() {
        var pad = Pad.complaint("drops-out")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "6.5 inwc")
                .plate("inletMaximum", "10.5 inwc")
                .read(
                        "seconds-to-drop-out 4 s",
                        "gas-static 10.0 inwc [slow-digital; idle]",
                        "gas-firing 10.0 inwc [slow-digital; firing]",
                        "valve-low 25.3 v [multimeter-minimum-hold; minimum-hold]",
                        "flame-signal 2.8 ua [microammeter; in-series, after-two-minutes]",
                        "leak-high-limit open [ohmmeter; warm, leads-lifted]",
                        "leak-outlet open [ohmmeter; warm, leads-lifted]");
        var finding = pad.unsettled();
        assertThat(finding.next().get(0).check()).isEqualTo("gas-firing");
        assertThat(finding.candidates())
                .filteredOn(each -> each.cause().equals("LD03"))
                .extracting(Candidate::standing)
                .doesNotContain(Candidate.Standing.RULED_OUT);

        var again = pad.read("gas-firing 6.3 inwc [u-tube; firing, furnace-on]").unsettled();
        assertThat(again.next()).extracting(NextCheck::check).startsWith("gas-meter-firing");
    }

    @Test
    void caseEightSootAndOpenRolloutFuse() {
        var pad = Pad.complaint("soot-or-rollout")
                .gate("G3", "yes")
                .read("scorch outside-chamber", "rollout-fuse open", "wiring-look browned");
        assertThat(pad.stopped().dangers()).extracting(Finding.Danger::gate).contains("G3");
        assertThatThrownBy(pad::quote).isInstanceOf(Refusal.StopWork.class);
    }

    @Test
    void caseEightAfterAReleaseThatNamesTheCause() {
        var pad = Pad.complaint("soot-or-rollout")
                .gate("G3", "yes")
                .read("scorch outside-chamber", "rollout-fuse open", "wiring-look browned")
                .release("G3", "blocked flue passages")
                .release("G2", "blocked flue passages")
                .release("G8", "blocked flue passages");
        var quote = pad.quote();
        assertThat(quote.choices()).allSatisfy(choice -> {
            if (Pad.work(choice).contains("R16")) {
                assertThat(Pad.work(choice)).contains("R25");
            }
        });
        assertThat(Pad.work(quote.choices().get(0))).contains("R16", "R25");
        assertThat(quote.choices().get(0).tests()).contains("G");
    }

    @Test
    void caseNineWeakHeatBecauseTheMeterIsTooSmall() {
        var pad = Pad.complaint("weak-heat")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "4 inwc")
                .plate("inletMaximum", "14 inwc")
                .read(
                        "gas-static 7.0 inwc [u-tube; idle]",
                        "gas-firing 4.2 inwc [u-tube; firing, heater-alone]",
                        "gas-firing 3.4 inwc [u-tube; firing, furnace-on]",
                        "gas-meter-firing 4.3 inwc [u-tube; firing, heater-alone]",
                        "gas-meter-firing 3.6 inwc [u-tube; firing, furnace-on]",
                        "clocked-input 292000 btu/h",
                        "water-rise 7 f",
                        "water-flow 65 gpm",
                        "load-sum 610000 btu/h",
                        "meter-rating 425 cfh");
        var quote = pad.quote();
        assertThat(quote.choices())
                .allSatisfy(choice -> assertThat(Pad.work(choice)).doesNotContain("R18", "R19"));
        assertThat(Pad.work(quote.choices().get(0))).contains("R20u");
        assertThat(Pad.notes(quote, quote.choices().get(0))).contains("N-UTIL");
    }

    @Test
    void caseTenLimitTripsBecauseOfLowFlow() {
        var pad = Pad.complaint("trips-after-minutes")
                .plate("input", "400000 btu/h")
                .plate("inletMinimum", "4 inwc")
                .plate("inletMaximum", "14 inwc")
                .plate("riseMaximum", "15 f")
                .read(
                        "filter-pressure 28 psi",
                        "filter-clean-pressure 12 psi",
                        "water-rise 23 f",
                        "header-at-trip 136 f",
                        "resets-as-it-cools yes",
                        "gas-static 10.0 inwc [u-tube; idle]",
                        "gas-firing 9.0 inwc [u-tube; firing, furnace-on]",
                        "valve-low 25 v [multimeter-minimum-hold; minimum-hold]",
                        "leak-high-limit open [ohmmeter; warm, leads-lifted]",
                        "leak-outlet open [ohmmeter; warm, leads-lifted]");
        assertThat(pad.settled().causes()).extracting(Candidate::cause).contains("TM01");
        var quote = pad.quote();
        assertThat(quote.choices())
                .allSatisfy(choice -> assertThat(Pad.work(choice)).doesNotContain("R03"));
    }

    private static String total(Choice choice) {
        return Amounts.plain(choice.totals().total());
    }
}
