package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.ReadingVerdict.Verdict;
import fairflame.quantity.Measure;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingVerdictTest {
    private static ReadingVerdict of(Visit visit, String check) {
        return Diagnosis.verdicts(Visit.KNOWLEDGE, visit.file()).stream()
                .filter(each -> each.reading().check().equals(check))
                .findFirst()
                .orElseThrow();
    }

    // The trade's rule of drop (common practice, no source) and the plate's minimum: the worse of the two.
    @ParameterizedTest(name = "static {0}, firing {1}, plate minimum {2}: {3}")
    @CsvSource(textBlock = """
        # static, firing, minimum, verdict
        10.0, 9.0, 4, GOOD
        10.0, 8.9, 4, GOOD
        10.0, 8.0, 4, GOOD
        10.0, 7.9, 4, EDGE
        10.0, 7.0, 4, EDGE
        10.0, 6.9, 4, OUTSIDE
        # a small drop does not save a pressure below the plate, and thin is thin
        6.0,  5.5, 6, OUTSIDE
        6.9,  6.4, 6, EDGE
        7.5,  7.0, 6, GOOD
        7.4,  6.9, 6, EDGE
        # seven at rest is what many utilities deliver
        7.0,  6.0, 4, GOOD
        """)
    void theWorseOfDropAndPlateWins(double rest, double firing, double minimum, Verdict expected) {
        var visit = Visit.of("weak-heat")
                .plate("minimum " + minimum + "inwc", "maximum 14inwc")
                .read("gas-static " + rest + " inwc [u-tube]", "gas-firing " + firing + " inwc [u-tube, furnace-on]");

        assertThat(of(visit, "gas-firing").verdict()).isEqualTo(expected);
    }

    @Test
    void propaneIsJudgedByThePlateAlone() {
        var visit = Visit.of("weak-heat")
                .plate("fuel propane", "minimum 4inwc", "maximum 13inwc")
                .read("gas-static 12 inwc [u-tube]", "gas-firing 8 inwc [u-tube]");

        assertThat(of(visit, "gas-firing").verdict()).isEqualTo(Verdict.GOOD);
        assertThat(of(visit.plate("minimum 11inwc"), "gas-firing").verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    void withoutAPlateNoPressurePasses() {
        var visit = Visit.of("weak-heat").read("gas-static 10 inwc", "gas-firing 9 inwc", "manifold 3.5 inwc");

        assertThat(of(visit, "gas-static").verdict()).isEqualTo(Verdict.DOUBTED);
        assertThat(of(visit, "gas-firing").verdict()).isEqualTo(Verdict.DOUBTED);
        assertThat(of(visit, "manifold").verdict()).isEqualTo(Verdict.DOUBTED);
        assertThat(of(visit, "gas-firing").allowedLow()).isEmpty();
    }

    @Test
    void theBandComesFromThePlateInTheUnitOfTheReading() {
        var visit = Visit.of("weak-heat")
                .plate("minimum 4inwc", "maximum 14inwc")
                .read("gas-static 2.4 kpa", "gas-firing 8.9 inwc");

        assertThat(of(visit, "gas-firing").allowedLow().map(Measure::toString)).isEqualTo(Optional.of("4.00 in w.c."));
        assertThat(of(visit, "gas-firing").allowedHigh().map(Measure::toString))
                .isEqualTo(Optional.of("14.00 in w.c."));
        assertThat(of(visit, "gas-static").allowedLow().map(Measure::toString)).isEqualTo(Optional.of("1.00 kPa"));
    }

    @Test
    void aSlowGaugeOnADropOutIsDoubted() {
        var slow = "gas-firing 8.9 inwc [slow-digital]";
        var dropsOut = Visit.of("drops-out").plate("minimum 4inwc").read("gas-static 9.5 inwc", slow);
        var weakHeat = Visit.of("weak-heat").plate("minimum 4inwc").read("gas-static 9.5 inwc", slow);

        assertThat(of(dropsOut, "gas-firing").verdict()).isEqualTo(Verdict.DOUBTED);
        assertThat(of(dropsOut, "gas-firing").words().get(0)).contains("hides a dip of a second");
        assertThat(of(weakHeat, "gas-firing").verdict()).isEqualTo(Verdict.GOOD);
    }

    @Test
    void aDoubtDoesNotHideAPressureBelowThePlate() {
        var visit = Visit.of("drops-out")
                .plate("minimum 7inwc")
                .read("gas-static 9.5 inwc", "gas-firing 6.5 inwc [slow-digital]");

        assertThat(of(visit, "gas-firing").verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @ParameterizedTest(name = "equal pressures with {0}: {1}")
    @CsvSource(textBlock = """
        input 400000btu/h, DOUBTED
        input 60000btu/h,  GOOD
        """)
    void noDipAtAllOnALargeHeaterIsTheInstrument(String plate, Verdict expected) {
        var visit = Visit.of("weak-heat")
                .plate("minimum 4inwc", plate)
                .read("gas-static 10.0 inwc", "gas-firing 9.95 inwc [u-tube]");

        assertThat(of(visit, "gas-firing").verdict()).isEqualTo(expected);
    }

    @ParameterizedTest(name = "valve at {0} V: {1}")
    @CsvSource(textBlock = """
        30.1, OUTSIDE
        30.0, EDGE
        28.9, EDGE
        28.8, GOOD
        22.0, GOOD
        21.9, EDGE
        20.4, EDGE
        20.3, OUTSIDE
        16.0, OUTSIDE
        15.9, OUTSIDE
        """)
    void theValveHasItsBands(String volts, Verdict expected) {
        var judged = of(Visit.of("weak-heat").read("valve-low " + volts + " v"), "valve-low");

        assertThat(judged.verdict()).isEqualTo(expected);
        assertThat(judged.allowedLow().map(Measure::toString)).isEqualTo(Optional.of("20.40 V"));
    }

    @Test
    void theWordsTellUnreliableFromLettingGo() {
        assertThat(of(Visit.of("leak").read("valve-low 16.0 v"), "valve-low").words())
                .containsExactly("16.0 V at the valve is below tolerance: it does not hold reliably.");
        assertThat(of(Visit.of("leak").read("valve-low 15.9 v"), "valve-low").words())
                .containsExactly("15.9 V at the valve: it lets go.");
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(textBlock = """
        leak-high-limit,      1 megohm,    GOOD
        leak-high-limit,      open,        GOOD
        leak-high-limit,      999 kilohm,  EDGE
        leak-high-limit,      100 kilohm,  EDGE
        leak-outlet,          99 kilohm,   OUTSIDE
        contact-outlet,       0.4 ohm,     GOOD
        contact-outlet,       0.5 ohm,     OUTSIDE
        switch-drop-outlet,   0.2 v,       OUTSIDE
        flame-signal,         0.9 ua,      OUTSIDE
        flame-signal,         1.2 ua,      EDGE
        flame-signal,         1.5 ua,      GOOD
        co-room,              9 ppm,       GOOD
        co-room,              10 ppm,      EDGE
        co-room,              71 ppm,      OUTSIDE
        co-flue,              99 ppm,      GOOD
        co-flue,              400 ppm,     EDGE
        co-flue,              401 ppm,     OUTSIDE
        flue-oxygen,          3.9 %,       OUTSIDE
        flue-oxygen,          6 %,         GOOD
        flue-oxygen,          12 %,        EDGE
        manifold-idle,        0 inwc,      GOOD
        manifold-idle,        0.1 inwc,    OUTSIDE
        transformer-idle,     23 v,        OUTSIDE
        transformer-idle,     26 v,        GOOD
        switch-age,           6 years,     EDGE
        switch-age,           5 years,     GOOD
        bypass-seconds,       61 s,        OUTSIDE
        bypass-seconds,       60 s,        GOOD
        header-at-trip,       110 f,       OUTSIDE
        header-at-trip,       136 f,       INFORMATION
        cock-handle,          parallel,    GOOD
        cock-handle,          angled,      OUTSIDE
        fault-code,           none,        GOOD
        worse-after-rain,     yes,         INFORMATION
        bypass-pair,          stays-lit,   INFORMATION
        water-source,         sealed,      GOOD
        water-source,         thread,      EDGE
        board-moisture,       unknown,     EDGE
        outdoor-temperature,  120 f,       EDGE
        outdoor-temperature,  70 f,        INFORMATION
        gas-static,           not measured, DOUBTED
        """)
    void eachReadingHasItsVerdict(String check, String value, Verdict expected) {
        var judged = of(Visit.of("weak-heat").read(check + " " + value), check);

        assertThat(judged.verdict()).isEqualTo(expected);
        assertThat(judged.words()).isNotEmpty().allMatch(words -> words.endsWith("."));
    }

    @Test
    void relativeBandsFollowTheOtherReading() {
        var visit = Visit.of("trips-after-minutes")
                .plate("rise 15", "input 400000btu/h", "manifold 3.5inwc", "minimum 4inwc")
                .read(
                        "filter-pressure 28 psi",
                        "filter-clean-pressure 12 psi",
                        "water-rise 23 f",
                        "line-volts 105 v",
                        "line-rating 120 v",
                        "line-volts-pump-start 109 v",
                        "manifold 3.1 inwc",
                        "gas-static 7 inwc",
                        "gas-meter-firing 4 inwc",
                        "gas-lock-up 8.1 inwc",
                        "clocked-input 430000 btu/h");

        assertThat(of(visit, "filter-pressure").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "water-rise").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "line-volts").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "line-volts-pump-start").verdict()).isEqualTo(Verdict.GOOD);
        assertThat(of(visit, "manifold").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "gas-meter-firing").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "gas-lock-up").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "clocked-input").verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(of(visit, "line-volts").allowedLow().map(Measure::toString)).isEqualTo(Optional.of("108.00 V"));
    }

    @Test
    void verdictsComeInTheOrderOfWorkAndCarryTheirSources() {
        var visit = Visit.of("drops-out")
                .plate("minimum 4inwc")
                .read("flame-signal 2 ua", "gas-static 9 inwc", "seconds-to-drop-out 5 s");

        var verdicts = Diagnosis.verdicts(Visit.KNOWLEDGE, visit.file());
        assertThat(verdicts)
                .extracting(each -> each.reading().check())
                .containsExactly("seconds-to-drop-out", "gas-static", "flame-signal");
        assertThat(verdicts.get(2).sources()).containsExactly("M-9");
        assertThat(verdicts.get(0).title()).isEqualTo("Time from light to drop-out");
        assertThat(Verdict.EDGE.word()).isEqualTo("at the edge");
    }
}
