package fairflame.screen;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.stage.Window;

/**
 * Opens the program's window and ends when it is drawn: the start window itself with {@code shown}, else the ledger in
 * it. Timed from outside as a whole process, beside {@link BareWindow}; figures in docs/measurements.md.
 */
public final class WindowStart {
    private static volatile boolean shown;

    private WindowStart() {}

    public static void main(String[] arguments) throws Exception {
        shown = arguments.length > 1 && arguments[1].equals("shown");
        var folder = arguments.length > 0 ? Path.of(arguments[0]) : Files.createTempDirectory("shop");
        var watch = new Thread(() -> {
            while (true) {
                try {
                    Platform.runLater(WindowStart::endWhenDrawn);
                } catch (IllegalStateException notYetStarted) {
                    Thread.onSpinWait();
                }
                pause();
            }
        });
        watch.setDaemon(true);
        watch.start();
        Screens.open(folder, Clock.systemDefaultZone(), "measure");
    }

    private static void endWhenDrawn() {
        for (var window : Window.getWindows()) {
            Node found = window.getScene() == null ? null : window.getScene().lookup("#new-visit");
            if (found != null || shown && window.isShowing()) {
                endAfterFirstFrames();
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(10);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Ends the process once two frames were drawn. */
    static void endAfterFirstFrames() {
        new AnimationTimer() {
            private int frames;

            @Override
            public void handle(long now) {
                if (++frames == 2) {
                    Runtime.getRuntime().halt(0);
                }
            }
        }.start();
    }
}
