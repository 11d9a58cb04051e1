package fairflame.screen.kit;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;

/** Takes a drawn signature by finger, pen or mouse and keeps it in thousandths of the pad's width. */
public final class SignaturePad extends Pane {
    private static final int THOUSANDTHS = 1000;
    private static final double LEAST_STEP = 1.5;

    private final List<Polyline> strokes = new ArrayList<>();
    private final ReadOnlyBooleanWrapper signed = new ReadOnlyBooleanWrapper(false);

    public SignaturePad(String accessibleText) {
        getStyleClass().add("sign-here");
        setMinHeight(120);
        setFocusTraversable(true);
        setAccessibleText(accessibleText);
        var clip = new Rectangle();
        clip.widthProperty().bind(widthProperty());
        clip.heightProperty().bind(heightProperty());
        setClip(clip);
        setOnMousePressed(this::begin);
        setOnMouseDragged(this::follow);
        setOnMouseReleased(event -> signed.set(strokes().stream().anyMatch(stroke -> stroke.size() > 4)));
    }

    private void begin(MouseEvent event) {
        requestFocus();
        var stroke = new Polyline(event.getX(), event.getY());
        stroke.getStyleClass().add("ink-line");
        strokes.add(stroke);
        getChildren().add(stroke);
        event.consume();
    }

    private void follow(MouseEvent event) {
        if (strokes.isEmpty()) {
            return;
        }
        var points = strokes.get(strokes.size() - 1).getPoints();
        var x = Math.max(0, Math.min(getWidth(), event.getX()));
        var y = Math.max(0, Math.min(getHeight(), event.getY()));
        var step = Math.hypot(x - points.get(points.size() - 2), y - points.get(points.size() - 1));
        if (step >= LEAST_STEP) {
            points.addAll(x, y);
        }
        event.consume();
    }

    /** True once something longer than a dot is drawn. */
    public ReadOnlyBooleanProperty signed() {
        return signed.getReadOnlyProperty();
    }

    /** The strokes as x,y pairs in thousandths of the pad's width. */
    public List<List<Integer>> strokes() {
        var width = Math.max(1, getWidth());
        return strokes.stream()
                .map(stroke -> stroke.getPoints().stream()
                        .map(value -> (int) Math.round(value * THOUSANDTHS / width))
                        .toList())
                .toList();
    }

    public void clear() {
        getChildren().removeAll(strokes);
        strokes.clear();
        signed.set(false);
    }
}
