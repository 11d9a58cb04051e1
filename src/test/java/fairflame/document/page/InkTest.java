package fairflame.document.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class InkTest {
    // WCAG 2.1, success criterion 1.4.3: at least 4.5 to 1 for text of ordinary size.
    private static final double READABLE = 4.5;
    // WCAG 2.1, success criterion 1.4.11: at least 3 to 1 for what must be seen in a drawing.
    private static final double VISIBLE = 3;

    @Test
    void blackOnWhiteIsTheHighestContrastThereIs() {
        // WCAG 2.1: the ratio ranges from 1 to 21.
        assertThat(Ink.contrast(0x000000, 0xFFFFFF)).isCloseTo(21, within(1e-9));
        assertThat(Ink.contrast(0xFFFFFF, 0xFFFFFF)).isCloseTo(1, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"INK, 13.8", "SLATE, 5.8", "COPPER, 5.8", "LAGOON, 7.0", "MOSS, 5.9", "AMBER, 6.5", "OXIDE, 7.6"})
    void hasTheContrastOnPaperThatTheDesignSays(Ink ink, double said) {
        assertThat(ink.contrast(Ink.PAPER)).isCloseTo(said, within(0.1));
    }

    @ParameterizedTest
    @EnumSource(
            value = Ink.class,
            names = {"INK", "SLATE", "COPPER", "LAGOON", "MOSS", "AMBER", "OXIDE"})
    void everyInkOfTextIsReadableOnEveryGround(Ink ink) {
        assertThat(ink.contrast(Ink.WHITE)).isGreaterThanOrEqualTo(READABLE);
        assertThat(ink.contrast(Ink.PAPER)).isGreaterThanOrEqualTo(READABLE);
    }

    @Test
    void linesOfAGaugeAreVisibleOnTheirGround() {
        assertThat(Ink.INK.contrast(Ink.BAND)).isGreaterThanOrEqualTo(VISIBLE);
        assertThat(Ink.INK.contrast(Ink.WATER)).isGreaterThanOrEqualTo(VISIBLE);
        assertThat(Ink.MOSS.contrast(Ink.BAND)).isGreaterThanOrEqualTo(VISIBLE);
        assertThat(Ink.LAGOON.contrast(Ink.WATER)).isGreaterThanOrEqualTo(VISIBLE);
    }
}
