package fairflame.screen.line;

import fairflame.screen.kit.Press;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** Lets a piece of the drawing be dragged by mouse, pen or finger, and moved or taken away by keyboard. */
final class Moving {
    private static final double LEAST_DRAG = 6;

    private final LineModel model;
    private final double em;
    private double fromX;
    private double fromY;

    private Moving(LineModel model, double em) {
        this.model = model;
        this.em = em;
    }

    /** The piece moves this node. */
    static void of(Press piece, String node, String id, LineModel model, double em) {
        new Moving(model, em).listen(piece, node, id);
    }

    private void listen(Press piece, String node, String id) {
        piece.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> {
            fromX = event.getSceneX();
            fromY = event.getSceneY();
            // The drawing under it would follow the finger too.
            event.consume();
        });
        piece.addEventHandler(MouseEvent.MOUSE_DRAGGED, event -> {
            if (event.getButton() == MouseButton.PRIMARY) {
                piece.setTranslateX(event.getSceneX() - fromX);
                piece.setTranslateY(event.getSceneY() - fromY);
                piece.toFront();
            }
            event.consume();
        });
        piece.addEventHandler(MouseEvent.MOUSE_RELEASED, event -> {
            var right = event.getSceneX() - fromX;
            var down = event.getSceneY() - fromY;
            piece.setTranslateX(0);
            piece.setTranslateY(0);
            if (Math.hypot(right, down) >= LEAST_DRAG) {
                model.move(node, right / em, down / em);
            }
        });
        piece.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.isShortcutDown() && step(event.getCode(), node)) {
                event.consume();
            } else if (event.getCode() == KeyCode.DELETE) {
                model.remove(id);
                event.consume();
            }
        });
    }

    private boolean step(KeyCode code, String node) {
        switch (code) {
            case LEFT -> model.move(node, -1, 0);
            case RIGHT -> model.move(node, 1, 0);
            case UP -> model.move(node, 0, -1);
            case DOWN -> model.move(node, 0, 1);
            default -> {
                return false;
            }
        }
        return true;
    }
}
