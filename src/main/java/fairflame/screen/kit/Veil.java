package fairflame.screen.kit;

import java.util.ArrayDeque;
import java.util.Deque;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** Everything else lies in the dark while one sheet asks for an answer. */
public final class Veil extends StackPane {
    private final StackPane below = new StackPane();
    private final Deque<StackPane> sheets = new ArrayDeque<>();

    public Veil(Node content) {
        below.getChildren().add(content);
        getChildren().add(below);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE
                    && !sheets.isEmpty()
                    && sheets.peek().getUserData() != null) {
                lift();
                event.consume();
            }
        });
    }

    /** Lays a sheet over everything; Escape lifts it again. */
    public void lay(Region sheet, double maxWidth) {
        cover(sheet, maxWidth, true);
    }

    /** Lays a sheet that only its own buttons can lift. */
    public void hold(Region sheet, double maxWidth) {
        cover(sheet, maxWidth, false);
    }

    private void cover(Region sheet, double maxWidth, boolean lifts) {
        var dark = new StackPane(sheet);
        dark.getStyleClass().add("veil");
        dark.setPadding(new Insets(16));
        dark.setUserData(lifts ? "lifts" : null);
        StackPane.setAlignment(sheet, Pos.CENTER);
        sheet.setMaxWidth(maxWidth);
        sheet.setMaxHeight(Region.USE_PREF_SIZE);
        sheet.maxHeightProperty().bind(heightProperty().subtract(32));
        sheets.push(dark);
        getChildren().add(dark);
        below.setDisable(true);
        sheet.requestFocus();
    }

    /** Takes the topmost sheet away. */
    public void lift() {
        if (!sheets.isEmpty()) {
            getChildren().remove(sheets.pop());
        }
        below.setDisable(!sheets.isEmpty());
    }

    public boolean covered() {
        return !sheets.isEmpty();
    }
}
