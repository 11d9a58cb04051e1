package fairflame.screen;

import fairflame.visit.Library;
import fairflame.visit.OwnShop;
import fairflame.visit.Workplace;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicReference;

/** Opens a shop's folder beside the window's thread, and opens it anew once the shop was begun. */
final class ShopDoor {
    private final Path folder;
    private final Clock clock;
    private final String who;
    private final AtomicReference<CompletableFuture<WorkplaceScreens>> current = new AtomicReference<>();

    ShopDoor(Path folder, Clock clock, String who) {
        this.folder = folder;
        this.clock = clock;
        this.who = who;
    }

    /** Reads the files and opens the database. */
    CompletableFuture<WorkplaceScreens> open() {
        var opening = CompletableFuture.supplyAsync(() -> {
            var sources = OwnShop.in(folder);
            var workplace = Workplace.open(folder, Library.load(sources), clock, who);
            var work = new WorkplaceScreens(workplace, sources.catalog().isEmpty());
            if (work.demo() && work.entries("").isEmpty()) {
                DemoVisits.all().forEach(work::keep);
            }
            return work;
        });
        current.set(opening);
        return opening;
    }

    /** Writes the files of a shop of one's own into this folder. */
    void begin(OwnShop.Details details) {
        OwnShop.begin(folder, details);
    }

    /** Opens the folder anew: a shop was begun in it. */
    CompletableFuture<WorkplaceScreens> again() {
        close();
        return open();
    }

    void close() {
        var opening = current.get();
        if (opening != null) {
            // Nobody waits for the end of the program to be told of.
            var unused = opening.thenAccept(WorkplaceScreens::close);
        }
    }
}
