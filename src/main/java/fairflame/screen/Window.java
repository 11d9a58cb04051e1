package fairflame.screen;

import fairflame.Refusal;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Look;
import fairflame.screen.look.Words;
import fairflame.visit.OwnShop;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;

/** The program's window: shown at once, filled when the shop's files are read, remembered when it closes. */
final class Window {
    private static final Duration PATIENCE = Duration.seconds(1);
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 900;
    private static final double LEAST_HEIGHT = 640;

    private final Stage stage;
    private final ShopDoor door;
    private final Look look = new Look();
    private final StackPane root = new StackPane();
    private WindowMemory remembered = WindowMemory.NONE;

    Window(Stage stage, ShopDoor door) {
        this.stage = stage;
        this.door = door;
    }

    /** Shows the window, then the shop in it. */
    void show() {
        var words = Words.in(Words.LANGUAGES.get(0));
        opening(words);
        var scene = new Scene(root, WIDTH, HEIGHT);
        look.dress(scene);
        stage.setTitle(words.say("app.name"));
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        stage.setScene(scene);
        stage.show();
        await(scene, door.open());
    }

    private void await(Scene scene, CompletableFuture<WorkplaceScreens> shop) {
        var unused = shop.whenComplete((work, failure) -> Platform.runLater(() -> {
            if (failure == null) {
                fill(scene, work);
            } else {
                var cause = failure instanceof CompletionException ? failure.getCause() : failure;
                refuse(cause == null ? failure : cause);
            }
        }));
    }

    /** What stands here while the shop's files are read; after a second also that it goes on, and a way to end it. */
    private void opening(Words words) {
        var opening =
                new VBox(12, Texts.line(words.say("app.name"), "huge"), Texts.line(words.say("app.opening"), "slate"));
        opening.setAlignment(Pos.CENTER);
        root.getChildren().setAll(opening);
        var wait = new PauseTransition(PATIENCE);
        wait.setOnFinished(event -> {
            var bar = new ProgressBar();
            bar.setAccessibleText(words.say("app.opening"));
            bar.setPrefWidth(LEAST_HEIGHT / 2);
            opening.getChildren().addAll(bar, Texts.button(words.say("busy.cancel"), stage::hide));
        });
        opening.sceneProperty().addListener((property, before, now) -> {
            if (now == null) {
                wait.stop();
            }
        });
        wait.play();
    }

    /** Begins a shop of one's own here and opens it. */
    private Beginning beginning(Scene scene, ShellModel model) {
        return new Beginning() {
            @Override
            public void begin(OwnShop.Details details) {
                door.begin(details);
            }

            @Override
            public void begun() {
                // The shop that lay open is closed: nothing of it may be pressed any more.
                opening(Words.in(model.language().get()));
                await(scene, door.again());
            }
        };
    }

    private void fill(Scene scene, ScreenWork work) {
        WindowMemory.restore(stage, look, work);
        var model = new ShellModel(work);
        model.resume();
        var shell = new Shell(model, look, beginning(scene, model));
        shell.keys(scene);
        root.getChildren().setAll(shell);
        remembered.cut();
        remembered = new WindowMemory(stage, look, work);
    }

    private void refuse(Throwable failure) {
        if (!(failure instanceof Refusal)) {
            stage.hide();
            throw new IllegalStateException(failure);
        }
        var words = Words.in(Words.LANGUAGES.get(0));
        var close = Texts.button(words.say("why.close"), stage::hide, "act");
        var box = new VBox(16, Texts.words(String.valueOf(failure.getMessage()), "large"), close);
        box.setAlignment(Pos.CENTER);
        box.setMaxWidth(LEAST_HEIGHT);
        root.getChildren().setAll(box);
    }
}
