package fairflame.screen.kit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Everything else lies in the dark while one sheet asks for an answer. */
public final class Veil extends StackPane {
    private final StackPane below = new StackPane();
    private final Deque<VBox> sheets = new ArrayDeque<>();
    private final Deque<Region> awaited = new ArrayDeque<>();

    public Veil(Node content) {
        below.getChildren().add(content);
        getChildren().add(below);
        addEventFilter(MouseEvent.MOUSE_PRESSED, this::heed);
        addEventFilter(KeyEvent.ANY, this::heed);
        addEventFilter(DragEvent.DRAG_DROPPED, this::heed);
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
        // A box gives the sheet the height it wants, and less where the window has less.
        var dark = new VBox(sheet);
        dark.getStyleClass().add("veil");
        dark.setAlignment(Pos.CENTER);
        dark.setPadding(new Insets(16));
        dark.setUserData(lifts ? "lifts" : null);
        sheet.setMaxWidth(maxWidth);
        sheet.setMinHeight(0);
        sheets.push(dark);
        getChildren().add(dark);
        below.setDisable(true);
        first(sheet).ifPresent(Node::requestFocus);
    }

    /** Where typing begins: the first field of a sheet, else its first key. */
    private static Optional<Node> first(Parent sheet) {
        var keys = new ArrayList<Node>();
        var fields = new ArrayList<Node>();
        collect(sheet, keys, fields);
        return fields.stream().findFirst().or(() -> keys.stream().findFirst());
    }

    private static void collect(Parent parent, List<Node> keys, List<Node> fields) {
        for (var child : parent.getChildrenUnmodifiable()) {
            if (child instanceof TextInputControl) {
                fields.add(child);
            } else if (child.isFocusTraversable() && !(child instanceof ScrollPane)) {
                keys.add(child);
            }
            if (child instanceof ScrollPane scroll && scroll.getContent() instanceof Parent content) {
                collect(content, keys, fields);
            } else if (child instanceof Parent inner) {
                collect(inner, keys, fields);
            }
        }
    }

    /** Takes the topmost sheet away. */
    public void lift() {
        if (!sheets.isEmpty()) {
            getChildren().remove(sheets.pop());
        }
        below.setDisable(!sheets.isEmpty());
    }

    /** From now on nothing is heeded but what is done on this sheet, whether it is laid already or not. */
    void await(Region sheet) {
        awaited.push(sheet);
    }

    /** Everything is heeded again; the sheet goes. */
    void answer(Region sheet) {
        awaited.remove(sheet);
        var dark = sheet.getParent();
        if (dark instanceof VBox laid && sheets.remove(laid)) {
            getChildren().remove(laid);
        }
        below.setDisable(!sheets.isEmpty());
    }

    private void heed(Event event) {
        if (!awaited.isEmpty() && !isOn(awaited.peek(), event.getTarget())) {
            event.consume();
        }
    }

    private static boolean isOn(Node sheet, EventTarget target) {
        for (var at = target instanceof Node node ? node : null; at != null; at = at.getParent()) {
            if (at.equals(sheet)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a sheet asks for an answer, or work is waited for. */
    public boolean covered() {
        return !sheets.isEmpty() || !awaited.isEmpty();
    }
}
