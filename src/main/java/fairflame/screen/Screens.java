package fairflame.screen;

import fairflame.screen.kit.Busy;
import fairflame.screen.look.Fonts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The one entry of the window face. */
public final class Screens {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private Screens() {}

    /**
     * Opens the window on a shop's folder and returns when it is closed. The window is shown first, then the shop's
     * files are read beside it. A folder or file that cannot be used is told in the window.
     *
     * @param folder database and papers of the shop, and its own files once it was begun; made when it is not there
     * @param who the person at the screen, as the journal names them
     */
    public static void open(Path folder, Clock clock, String who) {
        var opening = new ShopDoor(folder, clock, who);
        var closed = new CountDownLatch(1);
        Platform.startup(() -> {
            Fonts.load();
            var stage = new Stage();
            stage.setOnHidden(event -> closed.countDown());
            new Window(stage, opening).show();
        });
        await(closed);
        // What was begun is done: a signature given a moment ago is not lost with the window.
        Busy.finish(PATIENCE);
        opening.close();
        Platform.exit();
    }

    private static void await(CountDownLatch closed) {
        try {
            closed.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
