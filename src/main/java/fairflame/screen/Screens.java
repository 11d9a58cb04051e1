package fairflame.screen;

import fairflame.Refusal;
import fairflame.screen.look.Fonts;
import fairflame.visit.Library;
import fairflame.visit.Sources;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.stage.Stage;

/** The one entry of the window face. */
public final class Screens {
    private Screens() {}

    /**
     * Opens the window on a shop's folder and returns when it is closed. The shop's files are read while the toolkit
     * starts.
     *
     * @param folder database and papers of the shop; made when it is not there
     * @param sources the shop's own files; samples where none are given, and then marked as demo
     * @param who the person at the screen, as the journal names them
     * @throws Refusal when the folder or the files cannot be used; nothing is shown then
     */
    public static void open(Path folder, Sources sources, Clock clock, String who) {
        var shop = CompletableFuture.supplyAsync(() -> Workplace.open(folder, Library.load(sources), clock, who));
        var closed = new CountDownLatch(1);
        Platform.startup(() -> {
            Fonts.load();
            var stage = new Stage();
            stage.setOnHidden(event -> closed.countDown());
            new Window(stage, sources.catalog().isEmpty()).show(shop);
        });
        await(closed);
        shop.thenAccept(Workplace::close);
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
