package fairflame.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WordingTest {
    private static final Wording SPANISH = Wording.of(
            Language.SPANISH,
            List.of(
                    new Pair("Tee, black, {0} in", "Te negra de {0} pulg."),
                    new Pair("Tee, black, 2 in", "Te negra grande"),
                    new Pair("{0}, rated", "{0}, nominal"),
                    new Pair("Replace {0} by {1}.", "Poner {1} en lugar de {0}."),
                    new Pair("permits", "permisos"),
                    new Pair("deposit", "depósito")));

    @Test
    void aTextThatNobodyTranslatedStaysEnglish() {
        assertThat(SPANISH.of("Nobody translated this.")).isEqualTo("Nobody translated this.");
        assertThat(SPANISH.knows("Nobody translated this.")).isFalse();
    }

    @Test
    void aPlaceStandsForAnythingAndTheTextItselfGoesBeforeAShape() {
        assertThat(SPANISH.of("Tee, black, 3/4 in")).isEqualTo("Te negra de 3/4 pulg.");
        assertThat(SPANISH.of("Tee, black, 2 in")).isEqualTo("Te negra grande");
    }

    @Test
    void whatStandsInAPlaceIsTranslatedAndMayMove() {
        assertThat(SPANISH.of("Replace Tee, black, 1 in by deposit."))
                .isEqualTo("Poner depósito en lugar de Te negra de 1 pulg..");
    }

    @Test
    void theShapeThatSaysMoreIsTriedFirst() {
        assertThat(SPANISH.of("Tee, black, 1 in, rated")).isEqualTo("Te negra de 1 pulg., nominal");
    }

    @Test
    void aListIsTranslatedOnlyWhenEveryItemIsKnown() {
        assertThat(SPANISH.of("permits, deposit")).isEqualTo("permisos, depósito");
        assertThat(SPANISH.of("permits, Larkwell")).isEqualTo("permits, Larkwell");
    }

    @Test
    void theLastPairOfAnEnglishTextCounts() {
        var wording = Wording.of(Language.SPANISH, List.of(new Pair("a", "uno"), new Pair("a", "una")));
        assertThat(wording.of("a")).isEqualTo("una");
    }

    @Test
    void aPairWithOtherPlacesIsRefused() {
        assertThatThrownBy(() -> new Pair("It costs {total}.", "Cuesta {precio}."))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("{total}");
    }

    @Test
    void filesAreReadByLanguageAndARowThatIsNotWholeIsRefusedWithItsPlace() {
        var files = Map.of(
                "es/texts.yaml", "- en: Trip\n  es: Viaje\n",
                "es/layout.yaml", "language: es-US\n",
                "parts.csv", "number\n");
        assertThat(TextFiles.read(files, Language.SPANISH)).containsExactly(new Pair("Trip", "Viaje"));
        assertThat(TextFiles.read(files, Language.ENGLISH)).isEmpty();
        assertThatThrownBy(() -> TextFiles.read(Map.of("es/texts-a.yaml", "- en: Trip\n"), Language.SPANISH))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("es/texts-a.yaml row 1");
        assertThatThrownBy(() -> TextFiles.read(
                        Map.of("es/texts.yaml", "- {en: Trip, es: Viaje}\n- {en: Trip, es: Ida}\n"), Language.SPANISH))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("row 2");
    }

    record Inner(@Spoken String said, String id) {}

    record Outer(
            String name,
            @Spoken Map<String, String> notes,
            List<Inner> inner,
            @Spoken Optional<String> perhaps,
            int count) {}

    @Test
    void onlyWhatIsMarkedIsToldInTheLanguage() {
        var outer = new Outer(
                "permits",
                Map.of("permits", "deposit"),
                List.of(new Inner("permits", "permits")),
                Optional.of("deposit"),
                1);
        assertThat(Told.in(SPANISH, outer))
                .isEqualTo(new Outer(
                        "permits",
                        Map.of("permits", "depósito"),
                        List.of(new Inner("permisos", "permits")),
                        Optional.of("depósito"),
                        1));
        assertThat(Told.in(Wording.ENGLISH, outer)).isSameAs(outer);
        assertThat(Told.texts(outer)).containsExactly("deposit", "permits");
    }

    @Test
    void aLanguageIsKnownByItsCode() {
        assertThat(Language.of("es")).isEqualTo(Language.SPANISH);
        assertThatThrownBy(() -> Language.of("fr")).isInstanceOf(Refusal.class).hasMessageContaining("en, es");
    }
}
