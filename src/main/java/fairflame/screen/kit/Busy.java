package fairflame.screen.kit;

import fairflame.screen.look.Words;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.concurrent.Task;
import javafx.geometry.Insets;
import javafx.scene.control.ProgressBar;
import javafx.util.Duration;

/** Runs long work beside the window; after a second a sheet with its progress and a way to cancel appears. */
public final class Busy {
    private static final Duration PATIENCE = Duration.seconds(1);
    private static final double WIDTH = 460;

    private final Veil veil;
    private final Words words;

    public Busy(Veil veil, Words words) {
        this.veil = veil;
        this.words = words;
    }

    /** Runs the work and hands over its result on the window's thread; what it throws goes to {@code refused}. */
    public <T> void run(String title, Task<T> work, Consumer<T> done, Consumer<Throwable> refused) {
        var wait = new javafx.animation.PauseTransition(PATIENCE);
        var shown = new boolean[1];
        wait.setOnFinished(event -> {
            shown[0] = true;
            veil.hold(sheet(title, work), WIDTH);
        });
        Runnable end = () -> {
            wait.stop();
            if (shown[0]) {
                veil.lift();
            }
        };
        work.setOnSucceeded(event -> {
            end.run();
            done.accept(work.getValue());
        });
        work.setOnFailed(event -> {
            end.run();
            refused.accept(work.getException());
        });
        work.setOnCancelled(event -> end.run());
        var thread = new Thread(work, "fairflame-work");
        thread.setDaemon(true);
        wait.play();
        thread.start();
    }

    private javafx.scene.layout.Region sheet(String title, Task<?> work) {
        var bar = new ProgressBar();
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.progressProperty().bind(work.progressProperty());
        bar.setAccessibleText(title);
        var message = Texts.words("", "slate");
        message.textProperty().bind(work.messageProperty());
        var cancel = Texts.button(words.say("busy.cancel"), () -> Platform.runLater(work::cancel));
        cancel.setId("busy-cancel");
        var box = Texts.column(14, Texts.words(title, "large", "strong"), bar, message, cancel);
        box.getStyleClass().add("sheet");
        box.setPadding(new Insets(24));
        return box;
    }
}
