package fairflame.screen;

import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import java.util.Arrays;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;

/**
 * Remembers where the window stood, how large it was, its theme and its size of type: as they change, so that a process
 * that ends without a word loses nothing of it.
 */
final class WindowMemory {
    static final WindowMemory NONE = new WindowMemory();

    private static final String THEME = "theme";
    private static final String TEXT = "text";
    private static final String FRAME = "frame";
    private static final String NUMBER = "-?\\d{1,5}(\\.\\d{1,4})?";
    /** A window is dragged through many places; the one where it rests is kept. */
    private static final Duration REST = Duration.millis(400);

    private Runnable cut = () -> {};

    private WindowMemory() {}

    /** Remembers from now on. */
    WindowMemory(Stage stage, Look look, ScreenWork work) {
        var rest = new PauseTransition(REST);
        rest.setOnFinished(event -> work.remember(FRAME, frame(stage)));
        InvalidationListener moved = any -> rest.playFromStart();
        InvalidationListener dressed = any -> {
            work.remember(THEME, look.theme().get().name());
            work.remember(TEXT, String.valueOf(look.textPercent().get()));
        };
        var frame = Stream.<Observable>of(
                        stage.xProperty(), stage.yProperty(), stage.widthProperty(), stage.heightProperty())
                .toList();
        var dress = Stream.<Observable>of(look.theme(), look.textPercent()).toList();
        frame.forEach(each -> each.addListener(moved));
        dress.forEach(each -> each.addListener(dressed));
        stage.setOnHiding(event -> work.remember(FRAME, frame(stage)));
        cut = () -> {
            rest.stop();
            frame.forEach(each -> each.removeListener(moved));
            dress.forEach(each -> each.removeListener(dressed));
        };
    }

    /** Stops remembering, when another shop opens in the window. */
    void cut() {
        cut.run();
    }

    private static String frame(Stage stage) {
        return stage.getX() + "," + stage.getY() + "," + stage.getWidth() + "," + stage.getHeight();
    }

    /** Makes the window as it was; what cannot be read or lies on no screen any more is left as it is. */
    static void restore(Stage stage, Look look, ScreenWork work) {
        Arrays.stream(Theme.values())
                .filter(theme -> theme.name().equals(work.remembered(THEME)))
                .findFirst()
                .ifPresent(look.theme()::set);
        var text = work.remembered(TEXT);
        if (text.matches("1\\d\\d|200")) {
            look.textPercent(Integer.parseInt(text));
        }
        var place = work.remembered(FRAME).split(",", -1);
        if (place.length == 4 && Arrays.stream(place).allMatch(each -> each.matches(NUMBER))) {
            var at = Arrays.stream(place).mapToDouble(Double::parseDouble).toArray();
            if (at[2] >= stage.getMinWidth() && at[3] >= stage.getMinHeight() && seen(at)) {
                stage.setX(at[0]);
                stage.setY(at[1]);
                stage.setWidth(at[2]);
                stage.setHeight(at[3]);
            }
        }
    }

    private static boolean seen(double... at) {
        return Screen.getScreens().stream()
                .map(Screen::getVisualBounds)
                .anyMatch(screen -> screen.intersects(new Rectangle2D(at[0], at[1], at[2], at[3])));
    }
}
