package fairflame.screen.look;

import fairflame.Refusal;
import java.util.Objects;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;

/** Theme and text size of a window, applied to every scene that is handed in. */
public final class Look {
    /** Text sizes that the button steps through, percent. */
    public static final int SMALLEST = 100;

    public static final int LARGEST = 200;
    private static final int STEP = 25;
    private static final int BODY = 16;
    private static final int PERCENT = 100;

    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.BRIGHT);
    private final IntegerProperty textPercent = new SimpleIntegerProperty(SMALLEST);

    public ObjectProperty<Theme> theme() {
        return theme;
    }

    public IntegerProperty textPercent() {
        return textPercent;
    }

    /** Sets the text size; refused outside 100 to 200 %. */
    public void textPercent(int percent) {
        if (percent < SMALLEST || percent > LARGEST) {
            throw Refusal.outOfRange("text size", percent + " %", SMALLEST + " to " + LARGEST + " %");
        }
        textPercent.set(percent);
    }

    /** The next larger text; after the largest the smallest again. */
    public void nextTextSize() {
        var next = textPercent.get() + STEP;
        textPercent.set(next > LARGEST ? SMALLEST : next);
    }

    /** One em in pixels at this text size. */
    public double em() {
        return (double) BODY * textPercent.get() / PERCENT;
    }

    /** Dresses a scene and keeps it dressed while theme and text size change. */
    public void dress(Scene scene) {
        theme.addListener((property, before, now) -> apply(scene));
        textPercent.addListener((property, before, now) -> apply(scene));
        apply(scene);
    }

    private void apply(Scene scene) {
        scene.getStylesheets().setAll(theme.get().address(), sheet());
        scene.getRoot().setStyle("-fx-font-size: " + em() + "px;");
    }

    private static String sheet() {
        return Objects.requireNonNull(Look.class.getResource("/fairflame/screen/look.css"), "look.css")
                .toExternalForm();
    }
}
