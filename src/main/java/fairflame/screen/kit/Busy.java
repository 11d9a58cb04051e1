package fairflame.screen.kit;

import fairflame.screen.look.Words;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.concurrent.Task;
import javafx.geometry.Insets;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.Region;

/**
 * Runs long work beside the window. Meanwhile the window takes no other key or press; after a second a sheet with the
 * progress and a way to end the work appears.
 */
public final class Busy {
    private static final double PATIENCE_MILLIS = 1000;
    private static final double WIDTH = 460;
    private static final Set<Thread> RUNNING = ConcurrentHashMap.newKeySet();

    private final Veil veil;
    private final Words words;

    public Busy(Veil veil, Words words) {
        this.veil = veil;
        this.words = words;
    }

    /** Runs the work and hands over its result on the window's thread; what it throws goes to {@code refused}. */
    public <T> void run(String title, Task<T> work, Consumer<T> done, Consumer<Throwable> refused) {
        var sheet = sheet(title, work);
        var wait = new PauseTransition(javafx.util.Duration.millis(PATIENCE_MILLIS));
        wait.setOnFinished(event -> veil.hold(sheet, WIDTH));
        Runnable end = () -> {
            wait.stop();
            veil.answer(sheet);
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
        veil.await(sheet);
        wait.play();
        start(work);
    }

    private static void start(Task<?> work) {
        var thread = new Thread(
                () -> {
                    try {
                        work.run();
                    } finally {
                        RUNNING.remove(Thread.currentThread());
                    }
                },
                "fairflame-work");
        thread.setDaemon(true);
        RUNNING.add(thread);
        thread.start();
    }

    /** Waits for work that has begun, at most so long: what was begun is done before the program ends. */
    public static void finish(Duration most) {
        var end = System.nanoTime() + most.toNanos();
        for (var thread : RUNNING) {
            var left = Math.max(1, (end - System.nanoTime()) / 1_000_000);
            try {
                thread.join(left);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private Region sheet(String title, Task<?> work) {
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
