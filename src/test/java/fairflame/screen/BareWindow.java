package fairflame.screen;

import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;

/** The least JavaFX window there is: what the start of the program's own window is held against. See WindowStart. */
public final class BareWindow {
    private BareWindow() {}

    public static void main(String[] arguments) {
        Platform.startup(() -> {
            var stage = new Stage();
            stage.setScene(new Scene(new StackPane(new Label("bare")), 1280, 800));
            stage.show();
            WindowStart.endAfterFirstFrames();
        });
    }
}
