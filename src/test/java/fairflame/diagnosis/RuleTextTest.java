package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.diagnosis.Facts.Trust;
import fairflame.gas.Reconciliation.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RuleTextTest {
    private static final Vocabulary WORDS = Visit.KNOWLEDGE.vocabulary();

    private static boolean holds(String condition) {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc", "flame 1.2", "efficiency 80", "age 6")
                .read(
                        "gas-static 10.1 inwc [u-tube]",
                        "gas-firing 8.1 inwc [u-tube, furnace-on]",
                        "gas-firing 9.0 inwc [slow-digital, heater-alone]",
                        "gas-meter-firing 9.5 inwc [heater-alone]",
                        "leak-outlet open",
                        "leak-high-limit 22 kilohm [cold]",
                        "first-to-fall volts",
                        "flame-signal 0.9 ua",
                        "water-in 27 c",
                        "water-out 95 f",
                        "line-volts 104 v",
                        "line-rating 120 v",
                        "valve-low not measured")
                .released("G3", "something")
                .pipe(Verdict.EXPLAINS_PART, 2, 1);
        return RuleText.condition(condition, WORDS).holdsSomewhere(Facts.of(visit.file(), WORDS), Trust.ANY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gas-static > 10 inwc",
                "gas-static >= 10.1 inwc",
                "gas-static <= 10.1 inwc",
                "gas-static < 1 psi",
                "gas-static > 2.5 kpa",
                "gas-static - gas-firing[furnace-on] <= 2.0 inwc",
                "gas-static - gas-firing[furnace-on] >= 2.0 inwc",
                "gas-static - gas-firing[fast] between 2.0 inwc and 2.0 inwc",
                "gas-firing[slow] > 8.5 inwc",
                "gas-firing >= plate.inlet-minimum + 4.1 inwc",
                "gas-firing < 0.9 * gas-static",
                "gas-meter-firing - gas-firing <= 0.5 inwc",
                "leak-outlet > 1 megohm",
                "leak-outlet is open",
                "leak-high-limit is not open",
                "leak-high-limit[cold] < 100 kilohm",
                "first-to-fall is volts or gas",
                "first-to-fall is not gas",
                "flame-signal < plate.flame-minimum",
                "flame-signal < 0.001 ma",
                "computed.rise > 14 fdelta",
                "water-out - water-in < 15 fdelta",
                "computed.line-share < 90 %",
                "plate.age > 5 years",
                "plate.efficiency >= 80 %",
                "complaint is drops-out or leak",
                "fuel is natural",
                "pipe is explains-part",
                "pipe measured",
                "released is G3",
                "released is G1 or G3",
                "valve-low not measured",
                "leak-high-limit[warm] not measured",
                "plate.manifold not measured",
                "plate.input measured",
                "gas-static measured and first-to-fall is volts"
            })
    void holdsWhenTheReadingsSaySo(String condition) {
        assertThat(holds(condition)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gas-static > 10.1 inwc",
                "gas-static < 10.1 inwc",
                "gas-static - gas-firing[furnace-on] > 2.0 inwc",
                "gas-static - gas-firing[furnace-on] < 2.0 inwc",
                "gas-static - gas-firing[fast] between 2.1 inwc and 3.0 inwc",
                "gas-meter-firing - gas-firing > 1.0 inwc",
                "leak-outlet < 1 megohm",
                "leak-outlet is not open",
                "leak-high-limit is open",
                "leak-high-limit[warm] < 100 kilohm",
                "first-to-fall is gas",
                "first-to-fall is not volts",
                "valve-low < 20 v",
                "valve-low measured",
                "plate.manifold > 3 inwc",
                "computed.input-share < 95 %",
                "complaint is leak",
                "fuel is propane",
                "pipe is explains",
                "pipe not measured",
                "released is G1",
                "plate.input not measured",
                "gas-static measured and first-to-fall is gas"
            })
    void doesNotHoldWhenTheyDoNot(String condition) {
        assertThat(holds(condition)).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        gas-static                                  | condition
        gas-static >                                | condition
        > 3 inwc                                    | check
        gas-static > 3                              | condition
        gas-static > 3 bananas                      | unit
        gas-static > 20 v                           | comparison
        gas-static - valve-low > 3 inwc             | difference
        gas-static + valve-low > 3 inwc             | sum
        gas-statics > 3 inwc                        | check
        first-to-fall > 3 inwc                      | comparison
        first-to-fall is wind                       | word
        gas-static is high                          | word
        gas-firing[blue] > 3 inwc                   | tag
        plate.colour > 3 inwc                       | plate field
        computed.colour > 3 %                       | computed number
        complaint is sadness                        | word
        released is G99                             | word
        pipe is long                                | word
        gas-static not 3                            | condition
        gas-static between 3 inwc or 4 inwc         | condition
        gas-static > 3 inwc and                     | condition
        gas-static > 3 inwc 4                       | condition
        gas-static ! 3 inwc                         | condition
        plate.input is 3                            | word
        """)
    void refusesWhatIsNotInTheLanguage(String condition, String what) {
        assertThatThrownBy(() -> RuleText.condition(condition, WORDS))
                .isInstanceOf(Refusal.class)
                .extracting(refusal -> ((Refusal) refusal).what())
                .isEqualTo(what);
    }

    @Test
    void aReferenceIsACheckWithItsTags() {
        assertThat(RuleText.ref("gas-firing[furnace-on, fast]", WORDS)).hasToString("gas-firing[fast, furnace-on]");
        assertThat(RuleText.ref("gas-firing", WORDS)).hasToString("gas-firing");
        assertThatThrownBy(() -> RuleText.ref("gas-firing gas-static", WORDS)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> RuleText.term("gas-firing gas-static", WORDS)).isInstanceOf(Refusal.class);
    }

    @Test
    void anOpenLineLessAnOpenLineIsNothing() {
        var facts = Facts.of(
                Visit.of("drops-out")
                        .read("leak-outlet open", "leak-high-limit open")
                        .file(),
                WORDS);

        assertThat(RuleText.condition("leak-outlet - leak-high-limit < 1 ohm", WORDS)
                        .holdsSomewhere(facts, Trust.ANY))
                .isFalse();
        assertThat(RuleText.condition("leak-outlet + leak-high-limit > 1 ohm", WORDS)
                        .holdsSomewhere(facts, Trust.ANY))
                .isTrue();
    }

    @Test
    void whatIsMissingIsNamed() {
        var facts = Facts.of(Visit.of("drops-out").read("gas-static 9 inwc").file(), WORDS);

        assertThat(missing("gas-static - gas-firing[fast] > 3 inwc", facts)).containsExactly("gas-firing[fast]");
        assertThat(missing("gas-static < plate.inlet-minimum", facts)).containsExactly("data-plate");
        assertThat(missing("pipe is explains", facts)).containsExactly("pipe-layout");
        assertThat(missing("computed.filter-excess > 8 psi", facts))
                .containsExactly("filter-clean-pressure", "filter-pressure");
        assertThat(missing("computed.input-share > 8 %", facts)).containsExactly("clocked-input");
        assertThat(missing("first-to-fall is gas and 2 * valve-low > 3 v", facts))
                .containsExactly("first-to-fall", "valve-low");
        assertThat(missing("valve-low measured", facts)).containsExactly("valve-low");
        assertThat(missing("valve-low not measured", facts)).isEmpty();
        assertThat(missing("complaint is leak", facts)).isEmpty();
        assertThat(missing("gas-static > 3 inwc", facts)).isEmpty();
    }

    @Test
    void aComputedNumberAsksForThePlateWhenItsReadingsAreThere() {
        var facts = Facts.of(
                Visit.of("drops-out").read("clocked-input 300000 btu/h").file(), WORDS);

        assertThat(missing("computed.input-share > 8 %", facts)).containsExactly("data-plate");
    }

    private static java.util.List<String> missing(String condition, Facts facts) {
        return RuleText.condition(condition, WORDS).missing(facts, Trust.SOUND).stream()
                .map(CheckRef::toString)
                .sorted()
                .toList();
    }
}
