package fairflame.screen.look;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import javafx.scene.text.Font;

/** The bundled type. Every weight is loaded, or bold text would be drawn regular. */
public final class Fonts {
    private static final List<String> FILES = List.of(
            "AtkinsonHyperlegibleNext_400Regular.ttf",
            "AtkinsonHyperlegibleNext_400Regular_Italic.ttf",
            "AtkinsonHyperlegibleNext_600SemiBold.ttf",
            "AtkinsonHyperlegibleNext_700Bold.ttf",
            "AtkinsonHyperlegibleMono_400Regular.ttf",
            "AtkinsonHyperlegibleMono_600SemiBold.ttf");
    private static final double ANY_SIZE = 16;

    private Fonts() {}

    /** Loads all weights; harmless when called again. */
    public static void load() {
        FILES.forEach(Fonts::load);
    }

    private static void load(String file) {
        try (var stream = Objects.requireNonNull(Fonts.class.getResourceAsStream("/fonts/" + file), file)) {
            if (Font.loadFont(stream, ANY_SIZE) == null) {
                throw new IllegalStateException("the bundled font " + file + " cannot be read");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
