package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.kit.Busy;
import fairflame.visit.OwnShop;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.Callable;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The program's own window: a shop is opened beside it, and a shop of one's own is begun and opened in its place. */
@ExtendWith(ScreenMachine.class)
class OwnShopInWindowTest {
    @TempDir
    Path folder;

    private static void await(Callable<Boolean> held) {
        var end = System.nanoTime() + Duration.ofSeconds(120).toNanos();
        while (!Toolkit.on(held)) {
            assertThat(System.nanoTime()).as("waited two minutes").isLessThan(end);
            Toolkit.drawn();
        }
    }

    private static boolean has(Stage stage, String id) {
        return stage.getScene().lookup("#" + id) != null;
    }

    private static void press(Stage stage, String id) {
        Toolkit.run(() -> ((ButtonBase) stage.getScene().lookup("#" + id)).fire());
    }

    private static void type(Stage stage, String id, String text) {
        Toolkit.run(() -> ((TextField) stage.getScene().lookup("#" + id)).setText(text));
    }

    @Test
    void theDemoShopGivesWayToTheShopThatWasBegun() {
        var door = new ShopDoor(folder, Shop.DAY, "Tove Marchetti");
        var stage = Toolkit.on(() -> {
            var fresh = new Stage();
            new Window(fresh, door).show();
            return fresh;
        });
        await(() -> has(stage, "place-ledger"));
        Toolkit.settle();
        press(stage, "own-shop");
        await(() -> has(stage, "own-name"));
        type(stage, "own-name", "Heron Pool Care");
        type(stage, "own-address", "4 Weir Lane, Larkwell");
        type(stage, "own-phone", "555-0160");
        type(stage, "own-email", "hello@heron.example");
        Toolkit.drawn();
        press(stage, "own-start");
        assertThat(Toolkit.on(() -> 1)).as("the window answers meanwhile").isEqualTo(1);
        Busy.finish(Duration.ofSeconds(60));
        assertThat(OwnShop.in(folder).catalog()).isPresent();
        await(() -> has(stage, "place-ledger") && !has(stage, "own-name"));
        assertThat(door.open().join().shopName()).isEqualTo("Heron Pool Care");
        assertThat(Toolkit.on(() -> has(stage, "own-shop")))
                .as("no demo any more")
                .isFalse();
        Toolkit.run(() -> stage.setOnHiding(event -> {}));
        Toolkit.run(stage::hide);
        door.close();
    }
}
