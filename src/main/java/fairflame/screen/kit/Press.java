package fairflame.screen.kit;

import javafx.geometry.Pos;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;

/** A row that can be pressed like a button and, unlike one, grows with wrapped words. */
public final class Press extends HBox {
    private final Runnable action;

    public Press(String accessibleText, Runnable action, Node... content) {
        super(Texts.GAP, content);
        this.action = action;
        setAlignment(Pos.CENTER_LEFT);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setAccessibleText(accessibleText);
        setOnMousePressed(event -> requestFocus());
        setOnMouseClicked(event -> {
            if (event.isStillSincePress()) {
                action.run();
            }
        });
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                action.run();
                event.consume();
            }
        });
    }

    @Override
    public void executeAccessibleAction(AccessibleAction wanted, Object... parameters) {
        if (wanted == AccessibleAction.FIRE) {
            action.run();
        } else {
            super.executeAccessibleAction(wanted, parameters);
        }
    }

    /** Adds style classes and gives the row back. */
    public Press styled(String... styles) {
        getStyleClass().addAll(styles);
        return this;
    }
}
