package fairflame.screen.kit;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** Something rarely needed behind a key of its own. */
public final class Fold extends VBox {
    /** A fold; its content is made when it is opened. */
    public Fold(String id, String title, Supplier<? extends Node> content) {
        super(Texts.GAP);
        var key = new ToggleButton(title);
        key.setId(id);
        key.setWrapText(true);
        key.setMinHeight(USE_PREF_SIZE);
        getChildren().add(key);
        key.setOnAction(event -> {
            if (key.isSelected()) {
                getChildren().add(content.get());
            } else {
                getChildren().remove(1);
            }
        });
    }
}
