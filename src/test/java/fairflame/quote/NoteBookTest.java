package fairflame.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.PermitNeed;
import fairflame.catalog.Task;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteBookTest {
    private static final Map<String, String> WORDS = Map.of(
            "place", "Here", "fee", "1.00 USD", "licence", "gas fitter", "fitter", "X", "days", "3", "shop", "S");

    private static NoteBook book(String when) {
        return NoteBook.parse("notes:\n  - {id: N-X, boxed: false, when: [" + when + "], text: words, source: demo}\n");
    }

    private static NoteFacts facts(Duties duties, Set<String> tests, Set<String> access, Task... tasks) {
        return new NoteFacts(true, List.of(tasks), Set.of(), tests, access, duties, false, DemoShop.CITY);
    }

    @ParameterizedTest(name = "{0} prints {1}")
    @CsvSource({
        "always, true",
        "repair, true",
        "diagnosis-only, false",
        "regulated-gas, false",
        "asked, false",
        "cancel-right, true",
        "unknown-place, false",
        "permit ask, true",
        "permit yes, false",
        "trade T, true",
        "trade E, false",
        "test D, true",
        "test A, false",
        "task R03, true",
        "task R04, false",
        "access AX-DRAIN, true",
        "access AX-GAS, false"
    })
    void eachConditionLooksAtItsOwnFact(String condition, boolean prints) {
        var facts = facts(new Duties(false, PermitNeed.ASK, false), Set.of("D"), Set.of("AX-DRAIN"), DemoShop.R03);
        assertThat(book(condition).of(facts, WORDS)).hasSize(prints ? 1 : 0);
    }

    @Test
    void anyOneConditionIsEnoughAndTheFirstIsNamed() {
        var facts = facts(Duties.NONE, Set.of("D"), Set.of(), DemoShop.R03);
        assertThat(book("test A, task R03, test D").of(facts, WORDS))
                .singleElement()
                .satisfies(note -> assertThat(note.because()).isEqualTo("task R03"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sometimes", "always now", "permit no", "trade X", "trade", "test", "task", "access", "''"})
    void aConditionThatDoesNotExistIsRefused(String condition) {
        assertThatThrownBy(() -> book(condition))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("notes.yaml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "notes: [{id: N-X, boxed: false, when: [always], text: a}]",
                "notes: [{id: N-X, boxed: false, when: [always], text: a, source: b, colour: red}]",
                "notes: [{id: N-X, boxed: perhaps, when: [always], text: a, source: b}]",
                "notes: [{id: X, boxed: false, when: [always], text: a, source: b}]",
                "notes: [{id: N-X, boxed: false, when: [always], text: ' ', source: b}]",
                "notes: [{id: N-X, boxed: false, when: [always], text: '{colour}', source: b}]",
                "notes: [{id: N-X, id: N-Y, boxed: false, when: [always], text: a, source: b}]",
                "notes: [",
                "notes: [{id: N-X, boxed: false, when: [always], text: a, source: b}, "
                        + "{id: N-X, boxed: false, when: [always], text: a, source: b}]"
            })
    void aFileThatIsNotWholeIsRefusedInOneLine(String yaml) {
        assertThatThrownBy(() -> NoteBook.parse(yaml))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("notes.yaml")
                .hasMessageNotContaining("\n");
    }

    @Test
    void aRefusalNamesTheRow() {
        assertThatThrownBy(
                        () -> NoteBook.parse("notes:\n  - {id: N-A, boxed: true, when: [always], text: a, source: b}\n"
                                + "  - {id: N-B, boxed: true, when: [never], text: a, source: b}\n"))
                .hasMessageStartingWith("notes.yaml, notes[2].when[1]: note condition 'never'");
    }

    @Test
    void theSampleHasEveryNoteOfTheTradeWithASource() {
        assertThat(DemoQuotes.NOTES.notes())
                .extracting(NoteRule::id)
                .contains(
                        "N-LOCAL",
                        "N-GASFIT",
                        "N-PERMIT",
                        "N-TEST",
                        "N-UTIL",
                        "N-DIG",
                        "N-ELEC",
                        "N-BOND",
                        "N-NOBYPASS",
                        "N-CO",
                        "N-WATER",
                        "N-HOT",
                        "N-CHEM",
                        "N-HIDDEN",
                        "N-WATERSRC",
                        "N-SINGLE",
                        "N-CANCEL");
        assertThat(DemoQuotes.NOTES.notes())
                .allSatisfy(note -> assertThat(note.source()).isNotBlank());
    }

    @Test
    void gasNotesStandInTheBoxEvenWhenTheFileSaysOtherwise() {
        var silent = NoteBook.parse("""
                notes:
                  - {id: N-GASFIT, boxed: false, when: [], text: fitter, source: demo}
                  - {id: N-PERMIT, boxed: false, when: [], text: permit, source: demo}
                  - {id: N-TEST, boxed: false, when: [], text: test, source: demo}
                """);
        var facts = facts(new Duties(true, PermitNeed.YES, false), Set.of(), Set.of(), DemoShop.R18);
        assertThat(silent.of(facts, WORDS)).hasSize(3).allMatch(Note::boxed);
        var free = facts(new Duties(true, PermitNeed.NO, false), Set.of(), Set.of(), DemoShop.R18);
        assertThat(silent.of(free, WORDS)).extracting(Note::rule).containsExactly("N-GASFIT", "N-TEST");
        assertThat(silent.of(facts(Duties.NONE, Set.of(), Set.of(), DemoShop.R03), WORDS))
                .isEmpty();
    }

    @Test
    void aNoteThatATaskAsksForPrintsWhateverItsConditions() {
        var asking = new Task(
                "R98",
                "t",
                "p",
                DemoShop.R06.times(),
                Set.of(),
                List.of(),
                Set.of(),
                DemoShop.R06.trades(),
                "none",
                Set.of("N-X"),
                Set.of(),
                List.of(),
                "",
                "demo");
        assertThat(book("task R77").of(facts(Duties.NONE, Set.of(), Set.of(), asking), WORDS))
                .singleElement()
                .satisfies(note -> assertThat(note.because()).isEqualTo("asked for by task R98"));
    }

    @Test
    void wordsInBracesAreFilledIn() {
        assertThat(TemplateText.fill("{a} and {b}", Map.of("a", "$1", "b", "\\")))
                .isEqualTo("$1 and \\");
        assertThatThrownBy(() -> TemplateText.fill("{c}", Map.of("a", "1")))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("{c}")
                .hasMessageContaining("[a]");
    }

    @Test
    void theBoxComesFirstWhateverTheOrderOfTheFile() {
        var plainFirst = NoteBook.parse("""
                notes:
                  - {id: N-A, boxed: false, when: [always], text: a, source: demo}
                  - {id: N-B, boxed: true, when: [always], text: b, source: demo}
                  - {id: N-C, boxed: false, when: [cancel-right], text: c, source: demo}
                """);
        var notes = plainFirst.of(facts(Duties.NONE, Set.of(), Set.of(), DemoShop.R03), WORDS);
        assertThat(notes).extracting(Note::rule).containsExactly("N-B", "N-A", "N-C");
        assertThat(notes.get(2).because()).isEqualTo("right to cancel in Demo City");
    }
}
