package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.diagnosis.Facts.Trust;
import fairflame.gas.Reconciliation.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TemplateTest {
    private static final Vocabulary WORDS = Visit.KNOWLEDGE.vocabulary();

    private static String said(String words) {
        var visit = Visit.of("drops-out")
                .plate("input 400000btu/h", "minimum 4inwc", "flame 1.2", "age 6")
                .read(
                        "gas-static 10.1 inwc",
                        "gas-firing 2.05 kpa",
                        "first-to-fall not-seen",
                        "leak-outlet open",
                        "leak-high-limit 22 kilohm",
                        "water-in 80 f",
                        "water-out 95.5 f",
                        "clocked-input 292000 btu/h",
                        "bypass-seconds 90 s");
        var template = Template.parse(words, WORDS);
        var facts = Facts.of(visit.file(), WORDS);
        return template.in(Binding.all(facts, template.refs(), Trust.ANY).get(0));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        At rest {gas-static}, then down.          | At rest 10.1 in w.c., then down.
        It is {gas-static}.                       | It is 10.1 in w.c.
        It is {gas-static - 2 inwc} less.         | It is 8.1 in w.c. less.
        Read {gas-firing}.                        | Read 2.05 kPa.
        Lost {gas-static - gas-firing}!           | Lost 1.87 in w.c.!
        First: {first-to-fall}.                   | First: not seen.
        To the body {leak-outlet}.                | To the body open line.
        Twice {2 * leak-high-limit}.              | Twice 44 kilohm.
        Sum {leak-high-limit + leak-outlet}.      | Sum open line.
        The plate asks {plate.inlet-minimum}.     | The plate asks 4 in w.c.
        Flame {plate.flame-minimum}.              | Flame 1.2 \u03bcA.
        Input {plate.input}.                      | Input 400000 Btu/h.
        Half {0.5 * plate.input}.                 | Half 200000 Btu/h.
        Age {plate.age}.                          | Age 6 years.
        Manifold {plate.manifold}.                | Manifold unknown.
        Rise {computed.rise}.                     | Rise 15.5 \u00b0F.
        Rise {water-out - water-in}.              | Rise 15.5 \u00b0F.
        Share {computed.input-share}.             | Share 73 %.
        Edge {plate.inlet-minimum + 1.25 inwc}.   | Edge 5.3 in w.c.
        Pipe: {pipe}                              | Pipe: the gas line was not computed
        {bypass-seconds} long                     | 90 s long
        """)
    void printsValuesAsTheyWereTyped(String words, String expected) {
        assertThat(said(words)).isEqualTo(expected);
    }

    @Test
    void theReconciliationSpeaksForItself() {
        var file = Visit.of("drops-out").pipe(Verdict.EXPLAINS, 4, 3.9).file();
        var binding = Binding.empty(Facts.of(file, WORDS));

        assertThat(Template.parse("{pipe}", WORDS).in(binding)).startsWith("The pipe is predicted to lose 3.9");
    }

    @Test
    void refusesOpenBracesAndUnknownPlaces() {
        assertThatThrownBy(() -> Template.parse("Read {gas-static.", WORDS))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("every { closed by a }");
        assertThatThrownBy(() -> Template.parse("Read gas-static}.", WORDS)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Template.parse("Read {gas-statics}.", WORDS))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("gas-statics");
        assertThatThrownBy(() -> Template.parse("{gas-static - valve-low}", WORDS))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void keepsItsText() {
        assertThat(Template.parse("At {gas-static}.", WORDS)).hasToString("At {gas-static}.");
    }
}
