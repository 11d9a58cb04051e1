package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.wording.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TranslationTest {
    @Test
    void everyShippedTextThatACustomerMayReadHasSpanishWords() {
        assertThat(TranslationReview.missing(Pad.LIBRARY, Language.SPANISH)).isEmpty();
    }

    @Test
    void noShippedTranslationSpeaksEnglish() {
        var spanish = Pad.LIBRARY.in(Language.SPANISH);
        assertThat(EnglishWords.in(fairflame.wording.Told.texts(spanish.shop())))
                .isEmpty();
        assertThat(EnglishWords.in(fairflame.wording.Told.texts(spanish.notes())))
                .isEmpty();
        assertThat(EnglishWords.in(fairflame.wording.Told.texts(spanish.cautions())))
                .isEmpty();
        assertThat(EnglishWords.in(fairflame.wording.Told.texts(spanish.consent())))
                .isEmpty();
        assertThat(spanish.knowledge().causes())
                .allSatisfy(cause -> assertThat(EnglishWords.in(cause.title() + " " + cause.plain()))
                        .as(cause.title())
                        .isFalse());
        assertThat(spanish.knowledge().checks())
                .allSatisfy(check -> assertThat(EnglishWords.in(check.title()))
                        .as(check.title())
                        .isFalse());
    }

    @Test
    void aShopThatChangesASentenceReadsItInEnglishUntilItTranslatesIt(@TempDir Path folder) throws IOException {
        fairflame.store.Folder.shipped("templates").forEach((name, text) -> write(folder.resolve(name), text));
        var consent = folder.resolve("consent.yaml");
        Files.writeString(consent, Files.readString(consent).replace("I do not want it now.", "Not this year."));
        var sources = new Sources(Optional.empty(), Optional.empty(), Optional.of(folder));
        var changed = Library.load(sources);
        assertThat(changed.in(Language.SPANISH).consent().decline()).contains("Not this year.");
        assertThat(TranslationReview.missing(changed, Language.SPANISH))
                .singleElement()
                .asString()
                .contains("Not this year.");

        Files.writeString(
                folder.resolve("es/texts-ours.yaml"),
                "- en: " + changed.consent().decline().replace("\"", "\\\"").replaceAll("^(.*)$", "\"$1\"")
                        + "\n  es: \"No quiero {title} por {total} este año.\"\n");
        var translated = Library.load(sources);
        assertThat(TranslationReview.missing(translated, Language.SPANISH)).isEmpty();
        assertThat(translated.in(Language.SPANISH).consent().decline()).startsWith("No quiero");
    }

    @Test
    void aVisitWithoutALanguageIsForACustomerWhoReadsEnglish() {
        var json = fairflame.store.Folder.shipped("fairflame/demo").get("visit-1.json");
        var visits = Pad.LIBRARY.visits();
        assertThat(visits.read(json).language()).isEqualTo(Language.ENGLISH);
        var spanish = CustomerLanguage.text(json, Language.SPANISH);
        assertThat(visits.read(spanish).language()).isEqualTo(Language.SPANISH);
        assertThatThrownBy(() -> visits.read(spanish.replace("\"es\"", "\"fr\"")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("customer.language")
                .hasMessageContaining("en, es");
    }

    @Test
    void aCauseInAReleaseIsKnownByItsEnglishNameInEveryLanguage() {
        var titles = Pad.LIBRARY.knowledge().causes().stream().map(cause -> cause.title());
        assertThat(titles)
                .allSatisfy(title -> assertThat(Pad.LIBRARY.in(Language.SPANISH).knowledge().causes().stream()
                                .filter(cause -> cause.named().contains(title)))
                        .as(title)
                        .isNotEmpty());
    }

    private static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
