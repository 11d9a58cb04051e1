package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckTest {
    private static final Knowledge KNOWLEDGE = Visit.KNOWLEDGE;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
        gas-static      | 10.1 inwc      | 10.1 in w.c.
        gas-static      | 10.1INWC       | 10.1 in w.c.
        gas-static      | 0 inwc         | 0 in w.c.
        gas-static      | 60 inwc        | 60 in w.c.
        gas-static      | 2.5 kpa        | 2.5 kPa
        leak-outlet     | 22 kilohm      | 22 kilohm
        leak-outlet     | open           | open line
        leak-outlet     | Open Line      | open line
        leak-outlet     | >20 megohm     | open line
        leak-outlet     | over 20 megohm | open line
        leak-outlet     | above 1 megohm | open line
        flame-signal    | -0.4 ua        | -0.4 \u03bcA
        water-rise      | 12 c           | 12 \u00b0C
        cock-handle     | Parallel       | parallel
        fault-code      | water pressure | water-pressure
        cock-handle     | not measured   | not measured
        gas-static      | Not-Measured   | not measured
        """)
    void readsWhatIsTyped(String check, String typed, String value) {
        assertThat(KNOWLEDGE.check(check).read(typed)).hasToString(value);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
        gas-static      | 61 inwc        | Static gas pressure (gas-static) '61 inwc'  | 0 to 60 in w.c.
        gas-static      | -0.1 inwc      | '-0.1 inwc'                                 | 0 to 60 in w.c.
        gas-static      | 20 kpa         | '20 kpa'                                    | 0 to 60 in w.c.
        gas-static      | 10             | unit of pressure                            | inwc
        gas-static      | 10 v           | unit of pressure                            | inwc
        gas-static      | high           | Static gas pressure (gas-static)            | a number and a unit
        gas-static      | open           | Static gas pressure (gas-static)            | a number and a unit
        valve-low       | 45.1 v         | Lowest 24 V at the gas valve                | 0 to 45 V
        co-room         | 10001 ppm      | '10001 ppm'                                 | 0 to 10000 ppm
        flame-signal    | -1.5 ua        | '-1.5 ua'                                   | -1 to 30
        clock-seconds   | 2 s            | '2 s'                                       | 3 to 1800 s
        heating-value   | 800 btu/ft3    | '800 btu/ft3'                               | 850 to 2600
        leak-outlet     | over 5 kilohm  | 'over 5 kilohm'                             | turn the meter's range up
        leak-outlet     | over           | Outlet temperature switch                   | a number and a unit
        cock-handle     | sideways       | Handle of the gas cock (cock-handle)        | parallel, angled, across, not measured
        cock-handle     | 3 inwc         | '3-inwc'                                    | parallel
        """)
    void refusesWhatCannotBe(String check, String typed, String named, String allowed) {
        assertThatThrownBy(() -> KNOWLEDGE.check(check).read(typed))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(named)
                .hasMessageContaining(allowed);
    }

    @Test
    void questionsWhatIsUnusualAndKeepsIt() {
        var check = KNOWLEDGE.check("gas-static");

        assertThat(check.remark(check.read("14 inwc"))).isEmpty();
        assertThat(check.remark(check.read("5 inwc"))).isEmpty();
        assertThat(check.remark(check.read("14.1 inwc")).orElseThrow())
                .isEqualTo("Unusual: 14.1 in w.c.; usual is 5 to 14 in w.c.");
        assertThat(check.remark(check.read("not measured"))).isEmpty();
        var leak = KNOWLEDGE.check("leak-outlet");
        assertThat(leak.remark(leak.read("0.5 megohm")).orElseThrow()).contains("1000000 and more ohm or open");
        assertThat(leak.remark(leak.read("open"))).isEmpty();
        assertThat(KNOWLEDGE
                        .check("clock-seconds")
                        .remark(KNOWLEDGE.check("clock-seconds").read("900 s")))
                .isEmpty();
        assertThat(KNOWLEDGE.check("soot").remark(new Value.Word("wet"))).isEmpty();
    }

    @Test
    void aReadingKeepsInstrumentAndConditions() {
        var reading = KNOWLEDGE.reading("gas-firing", "8.9 inwc", "u-tube", Set.of("furnace-on"));

        assertThat(reading.instrument()).isEqualTo("u-tube");
        assertThat(reading.conditions()).containsExactly("furnace-on");
        assertThat(reading.seen()).isTrue();
        assertThatThrownBy(() -> KNOWLEDGE.reading("gas-firing", "8.9 inwc", "crystal-ball", Set.of()))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("crystal-ball");
        assertThatThrownBy(() -> KNOWLEDGE.reading("gas-firing", "8.9 inwc", "", Set.of("at-midnight")))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("at-midnight");
        assertThatThrownBy(() -> KNOWLEDGE.reading("gas-fire", "8.9 inwc", "", Set.of()))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("gas-fire");
    }

    @Test
    void aCaseFileWithAValueOfTheWrongKindIsRefused() {
        var pressureOfVolts = new Reading(
                "gas-static", new Value.Measured(Measure.parse(Dimension.VOLTAGE, "5 v")), "", Set.of(), true, "");
        var wordForANumber = new Reading("gas-static", new Value.Word("high"), "", Set.of(), true, "");
        var openForAPressure = new Reading("gas-static", new Value.OpenLine(), "", Set.of(), true, "");
        var numberForAWord = new Reading(
                "soot", new Value.Measured(Measure.parse(Dimension.VOLTAGE, "5 v")), "", Set.of(), true, "");
        var tooMuch = new Reading(
                "gas-static", new Value.Measured(Measure.parse(Dimension.PRESSURE, "99 inwc")), "", Set.of(), true, "");

        for (var reading :
                java.util.List.of(pressureOfVolts, wordForANumber, openForAPressure, numberForAWord, tooMuch)) {
            assertThatThrownBy(() -> Diagnosis.of(
                            KNOWLEDGE, Visit.of("drops-out").with(reading).file()))
                    .as(reading.toString())
                    .isInstanceOf(Refusal.class);
        }
    }

    @Test
    void aCaseFileWithUnknownWordsIsRefused() {
        assertThatThrownBy(() -> Visit.of("sadness").finding()).isInstanceOf(Refusal.Unknown.class);
        assertThatThrownBy(
                        () -> Visit.of("drops-out").gate("G99", GateAnswer.NO).finding())
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("G99");
        assertThatThrownBy(() -> Visit.of("drops-out").released("G99", "x").finding())
                .isInstanceOf(Refusal.Unknown.class);
    }

    @Test
    void tooManyReadingsOfOneCheckAreRefused() {
        var visit = Visit.of("drops-out");
        for (int i = 0; i < Facts.MOST_OF_ONE_CHECK; i++) {
            visit.read("gas-static " + (5 + i) + " inwc");
        }
        visit.finding();

        assertThatThrownBy(() -> visit.read("gas-static 4 inwc").finding())
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("readings of gas-static '13'");
    }

    @Test
    void rangesAreReadAndRefused() {
        assertThat(Range.parse("-5 to 5").covers(-5)).isTrue();
        assertThat(Range.parse("-5 to 5").covers(5.1)).isFalse();
        assertThat(Range.parse("0.25 to 100")).hasToString("0.25 to 100");
        assertThat(Range.parse("0 to open").covers(Double.POSITIVE_INFINITY)).isTrue();
        assertThat(Range.parse("1000 to open")).hasToString("1000 and more");
        assertThatThrownBy(() -> Range.parse("5")).isInstanceOf(Refusal.Malformed.class);
        assertThatThrownBy(() -> new Range(3, 2)).isInstanceOf(Refusal.Malformed.class);
        assertThatThrownBy(() -> new Range(Double.NaN, 2)).isInstanceOf(Refusal.Malformed.class);
    }

    @Test
    void onlyCircumstancesThatMakeADifferenceAreOfferedFirst() {
        assertThat(circumstances("gas-firing")).containsExactlyInAnyOrder("furnace-on", "heater-alone");
        assertThat(circumstances("gas-meter-firing"))
                .as("compared with the pressure at the heater under the same load")
                .containsExactlyInAnyOrder("furnace-on", "heater-alone");
        assertThat(circumstances("leak-outlet")).containsExactlyInAnyOrder("cold", "warm", "leads-lifted", "leads-on");
        assertThat(circumstances("soot")).isEmpty();
    }

    private static java.util.List<String> circumstances(String check) {
        return KNOWLEDGE.circumstances(check).stream().map(Circumstance::id).toList();
    }
}
