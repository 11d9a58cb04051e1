package fairflame.document.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TextTest {
    private static final Style STYLE = new Style(Face.REGULAR, 10, 13, Ink.INK);

    private static List<String> lines(String words, double width) {
        return Text.of(words, STYLE).lines(width).stream().map(TextTest::words).toList();
    }

    private static String words(TextLine line) {
        return line.glyphs().stream()
                .map(g -> Character.toString(g.codePoint()))
                .collect(Collectors.joining());
    }

    @Test
    void breaksBetweenWords() {
        assertThat(lines("the flame goes out", 50)).containsExactly("the flame", "goes out");
    }

    @Test
    void breaksAWordThatIsWiderThanTheLine() {
        var broken = lines("Donaudampfschifffahrtsgesellschaft", 60);
        assertThat(broken).hasSizeGreaterThan(2);
        assertThat(String.join("", broken)).isEqualTo("Donaudampfschifffahrtsgesellschaft");
    }

    @Test
    void keepsANumberWithItsUnit() {
        var words = "a dip of 4 in w.c. was read";
        for (int width = 55; width < 140; width++) {
            assertThat(lines(words, width)).as("width %d", width).noneMatch(line -> line.endsWith("4"));
            assertThat(lines(words, width)).as("width %d", width).noneMatch(line -> line.endsWith(" in"));
        }
    }

    @Test
    void keepsWordsJoinedByAHardSpace() {
        assertThat(lines("aaaa bbbb\u00A0cccc", 60)).containsExactly("aaaa", "bbbb\u00A0cccc");
    }

    @Test
    void aNewLineInTheWordsBeginsANewLine() {
        assertThat(lines("one\ntwo\n\nthree", 200)).containsExactly("one", "two", "", "three");
    }

    @Test
    void writesMicroAndOhmWithLettersThatTheFaceHas() {
        assertThat(lines("2.6 \u00B5A, 22 k\u2126", 200)).containsExactly("2.6 \u03BCA, 22 k\u03A9");
    }

    @Test
    void drawsArrowsAndChecksAsShapes() {
        var kinds = Text.of("\u2192\u2713\u2610", STYLE).lines(100).get(0).glyphs();
        assertThat(kinds).allMatch(glyph -> glyph.kind() == Glyph.Kind.SYMBOL && glyph.width() > 0);
    }

    @Test
    void marksALetterThatNoFaceHasInsteadOfDroppingIt() {
        var glyphs = Text.of("\u0416\u4E2D", STYLE).lines(100).get(0).glyphs();
        assertThat(glyphs).hasSize(2).allMatch(glyph -> glyph.kind() == Glyph.Kind.MISSING);
    }

    @Test
    void everyFaceHasEveryLetterOfEnglishAndSpanish() {
        var letters =
                "ABCXYZabcxyz0123456789.,:;!?\u00BF\u00A1\u00E1\u00E9\u00ED\u00F3\u00FA\u00F1\u00FC\u00D1\u00B0\u03A9\u03BC\u2212\u2022\u00B7\u2013\u2014\u2026$%+()/-'\"";
        for (var face : Face.values()) {
            letters.codePoints()
                    .forEach(c ->
                            assertThat(face.has(c)).as("%s U+%04X", face, c).isTrue());
        }
    }

    @Test
    void losesNoWordAndNeverRunsOverTheWidth() {
        for (long seed = 0; seed < 300; seed++) {
            var random = new Random(seed);
            var words = sentence(random);
            double width = 30 + random.nextInt(300);
            var lines = Text.of(words, STYLE).lines(width);
            var together = lines.stream().map(TextTest::words).collect(Collectors.joining());
            assertThat(together.replace(" ", "")).as("seed %d: %s", seed, words).isEqualTo(words.replace(" ", ""));
            assertThat(lines).as("seed %d: %s", seed, words).allMatch(line -> line.width() <= width + 0.02);
        }
    }

    private static String sentence(Random random) {
        var words = new StringBuilder();
        for (int i = 0; i < 1 + random.nextInt(30); i++) {
            for (int j = 0; j < 1 + random.nextInt(random.nextInt(10) == 0 ? 60 : 9); j++) {
                words.append("abcdefghijklm-/.,4 5V\u2713".charAt(random.nextInt(22)));
            }
            words.append(' ');
        }
        return words.toString().strip();
    }

    @Test
    void shortensWithAnEllipsis() {
        var fitted = Text.of("a name that is far too long for its place", STYLE).fitted(60);
        assertThat(fitted.toString()).startsWith("a name").endsWith("\u2026");
        assertThat(fitted.width()).isLessThanOrEqualTo(60);
        assertThat(Text.of("short", STYLE).fitted(60).toString()).isEqualTo("short");
    }
}
