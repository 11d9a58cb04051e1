package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.look.Theme;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The window after a restart: where it stood, how it looked, and what lay on the bench. */
@ExtendWith(ScreenMachine.class)
class WindowMemoryTest {
    private static final int PATIENCE = 400;

    @TempDir
    Path folder;

    @Test
    void theWindowComesBackAsItWasLeft() {
        var visit = leave();
        var door = new ShopDoor(folder, Shop.DAY, "Ines Calloway");
        var stage = open(door);
        await(() -> Toolkit.on(() -> stage.getScene().lookup("#step-gates") != null));
        try {
            Toolkit.run(() -> {
                assertThat(stage.getX()).isEqualTo(60);
                assertThat(stage.getY()).isEqualTo(40);
                assertThat(stage.getWidth()).isEqualTo(1100);
                assertThat(stage.getHeight()).isEqualTo(700);
                var root = stage.getScene().getRoot();
                assertThat(stage.getScene().getStylesheets().get(0)).isEqualTo(Theme.DIM.address());
                assertThat(root.getStyle()).contains("20.0px");
                assertThat(((ButtonBase) root.lookup("#tool-language")).getText())
                        .isEqualTo("English");
            });
            assertThat(door.open().join().remembered("visit")).isEqualTo(visit);
        } finally {
            Toolkit.run(stage::hide);
            door.close();
        }
    }

    /** Sets the window up and leaves it without closing: the process may as well have been killed. */
    private String leave() {
        var door = new ShopDoor(folder, Shop.DAY, "Ines Calloway");
        var stage = open(door);
        Toolkit.run(() -> {
            stage.setX(60);
            stage.setY(40);
            stage.setWidth(1100);
            stage.setHeight(700);
            press(stage, "tool-theme");
            press(stage, "tool-language");
            press(stage, "new-visit");
        });
        await(() -> Toolkit.on(() -> name(stage).isPresent()));
        Toolkit.run(() -> {
            name(stage).orElseThrow().setText("Odalys");
            press(stage, "tool-text");
        });
        var work = door.open().join();
        await(() -> work.remembered("frame").startsWith("60.0,40.0,1100.0,700.0"));
        var visit = work.remembered("visit");
        Toolkit.run(() -> stage.setOnHiding(event -> {}));
        Toolkit.run(stage::hide);
        door.close();
        return visit;
    }

    private static Stage open(ShopDoor door) {
        var stage = Toolkit.on(() -> {
            var fresh = new Stage();
            new Window(fresh, door).show();
            return fresh;
        });
        await(() -> Toolkit.on(() -> stage.getScene().lookup("#tool-theme") != null));
        return stage;
    }

    /** The field of the customer's name, once its card is drawn. */
    private static Optional<TextField> name(Stage stage) {
        return stage.getScene().getRoot().lookupAll(".text-field").stream()
                .filter(field -> "customer.name".equals(field.getId()))
                .map(TextField.class::cast)
                .findFirst();
    }

    private static void press(Stage stage, String id) {
        ((ButtonBase) stage.getScene().lookup("#" + id)).fire();
    }

    private static void await(Supplier<Boolean> there) {
        for (int i = 0; i < PATIENCE && !there.get(); i++) {
            Toolkit.settle();
        }
        assertThat(there.get()).isTrue();
    }
}
