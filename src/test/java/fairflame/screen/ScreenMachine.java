package fairflame.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Lets window tests run where the text libraries are, and elsewhere skips them loudly, naming the Debian packages. With
 * {@code -Dscreens.required=true} a machine without them fails the build: a skip is not a pass.
 */
public final class ScreenMachine implements ExecutionCondition {
    private static final String PACKAGES = "libfreetype6 libpangoft2-1.0-0 libfontconfig1";
    private static final ConditionEvaluationResult FOUND = find();

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return FOUND;
    }

    private static ConditionEvaluationResult find() {
        try {
            for (var library :
                    new String[] {"libjavafx_font.so", "libjavafx_font_freetype.so", "libjavafx_font_pango.so"}) {
                load(library);
            }
            return ConditionEvaluationResult.enabled("text libraries are there");
        } catch (UnsatisfiedLinkError | IOException e) {
            var words = "WINDOW TESTS ARE SKIPPED: install " + PACKAGES + " (" + e.getMessage() + ")";
            System.err.println(words);
            if (Boolean.getBoolean("screens.required")) {
                throw new IllegalStateException(words);
            }
            return ConditionEvaluationResult.disabled(words);
        }
    }

    private static void load(String library) throws IOException {
        try (var stream = javafx.scene.Scene.class.getResourceAsStream("/" + library)) {
            if (stream == null) {
                return; // another system than Linux brings its own text engine
            }
            var copy = Files.createTempDirectory("text-library").resolve(library);
            Files.copy(stream, copy, StandardCopyOption.REPLACE_EXISTING);
            System.load(copy.toString());
            deleteLater(copy);
        }
    }

    private static void deleteLater(Path copy) {
        copy.toFile().deleteOnExit();
    }
}
