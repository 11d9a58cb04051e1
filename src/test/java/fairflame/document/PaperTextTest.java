package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTextTest {
    private static Map<String, String> changed(String file, String from, String to) {
        var files = new TreeMap<>(Papers.templates());
        var text = files.getOrDefault(file, "");
        assertThat(text).as(file).contains(from);
        files.put(file, text.replace(from, to));
        return files;
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everyWordIsThereInEveryLanguage(String language) {
        var text = Papers.text(language);
        for (var label : Label.values()) {
            var values = label.names().toArray(String[]::new);
            assertThat(text.say(label, values)).as(label.name()).isNotBlank().doesNotContain("{");
        }
        assertThat(text.terms()).hasSizeGreaterThan(5);
        assertThat(text.diagnosisTerms()).isNotEmpty();
        assertThat(text.company().seller().name()).isEqualTo("Sandpiper Pool Heat");
    }

    @Test
    void bothLanguagesHaveTheSameListsOfWords() {
        for (var test : List.of("A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N", "P", "T")) {
            for (var language : List.of("en", "es")) {
                assertThat(Papers.text(language).word("tests", test))
                        .as(language + " " + test)
                        .isNotEqualTo(test);
            }
        }
        for (var kind : fairflame.quote.LineKind.values()) {
            assertThat(Papers.text("en").word("kinds", kind.word())).isNotEqualTo(kind.word());
            assertThat(Papers.text("es").word("kinds", kind.word())).isNotEqualTo(kind.word());
        }
    }

    @Test
    void saysTheWordsOfTheLanguageAsked() {
        assertThat(Papers.text("en").say(Label.PAGE_OF, "1", "3")).isEqualTo("page 1 of 3");
        assertThat(Papers.text("es").say(Label.PAGE_OF, "1", "3")).isEqualTo("p\u00E1gina 1 de 3");
        assertThat(Papers.text("es").company().tagline()).startsWith("Calentadores");
    }

    @Test
    void putsValuesInAsTheyAre() {
        assertThat(Papers.text().say(Label.WITNESS, "Ann {role} $1 \\ O'Hara"))
                .isEqualTo("Signature taken by Ann {role} $1 \\ O'Hara");
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    # file | from | to | what the refusal says
                    en/layout.yaml | quote-subtitle: | other-subtitle: | en/layout.yaml: words.quote-subtitle
                    en/layout.yaml | "Quote {number}, revision {revision}" | "Quote {numbr}" | {numbr}
                    en/layout.yaml | ', November, December' | ', November' | 11 names
                    en/layout.yaml | 'language: en-US' | 'tongue: en-US' | tongue
                    en/layout.yaml | '  invoice: "Invoice"' | '  invoice: ""' | words.invoice
                    en/layout.yaml | '  number: "Number"' | '  number: "Number"\\n  number: "No."' | number
                    en/layout.yaml | 'words:' | 'words: [' | en/layout.yaml, line
                    en/terms.yaml | 'diagnosis:' | 'diagnoses:' | diagnoses
                    en/terms.yaml | '{seller}, {address}' | '{vendor}' | {vendor}
                    company.yaml | flame-over-water\\n | lightning\\n | flame-over-water, none
                    company.yaml | 'phone: 555-0142' | 'fone: 555-0142' | fone
                    """)
    void namesTheFileAndTheWordThatIsWrong(String file, String from, String to, String said) {
        var files = changed(file, from.replace("\\n", "\n"), to.replace("\\n", "\n"));
        assertThatThrownBy(() -> PaperText.parse(files, "en"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(file.substring(file.indexOf('/') + 1))
                .hasMessageContaining(said);
    }

    @Test
    void aMissingFileIsNamed() {
        var files = new TreeMap<>(Papers.templates());
        files.remove("en/terms.yaml");
        assertThatThrownBy(() -> PaperText.parse(files, "en"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("en/terms.yaml");
        assertThatThrownBy(() -> PaperText.parse(files, "fr"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("fr");
    }

    @Test
    void aShopWithoutAMarkHasNone() throws java.io.IOException {
        var files = changed("company.yaml", "mark: flame-over-water", "mark: none");
        assertThat(PaperText.parse(files, "en").company().mark()).isEqualTo(Company.Mark.NONE);
        var file = StopWorkPdf.write(
                Unsettled.gasSmell(), PaperText.parse(files, "en"), fairflame.document.page.PageFormat.A4);
        assertThat(new ReadBack(file).text()).startsWith("Sandpiper Pool Heat");
    }
}
