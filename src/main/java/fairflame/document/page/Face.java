package fairflame.document.page;

import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.UncheckedIOException;

/** The bundled cuts of Atkinson Hyperlegible Next and Mono (SIL Open Font License 1.1, beside the font files). */
public enum Face {
    REGULAR("AtkinsonHyperlegibleNext_400Regular"),
    SEMIBOLD("AtkinsonHyperlegibleNext_600SemiBold"),
    BOLD("AtkinsonHyperlegibleNext_700Bold"),
    ITALIC("AtkinsonHyperlegibleNext_400Regular_Italic"),
    /** Every figure as wide as the next: for columns of numbers. */
    MONO("AtkinsonHyperlegibleMono_400Regular"),
    MONO_SEMIBOLD("AtkinsonHyperlegibleMono_600SemiBold");

    private final BaseFont font;

    Face(String file) {
        font = load("/fonts/" + file + ".ttf");
    }

    private static BaseFont load(String resource) {
        try (var stream = Face.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("font is not in the program: " + resource);
            }
            var font = BaseFont.createFont(
                    resource, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, stream.readAllBytes(), null);
            font.setSubset(true);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("font cannot be read: " + resource, e);
        }
    }

    BaseFont font() {
        return font;
    }

    boolean has(int codePoint) {
        return font.charExists(codePoint);
    }

    /** Width in points of a text whose every character the face has. */
    double width(String text, double size) {
        return font.getWidthPoint(text, (float) size);
    }
}
