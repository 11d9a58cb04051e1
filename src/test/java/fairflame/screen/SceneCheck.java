package fairflame.screen;

import fairflame.screen.kit.Press;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;

/**
 * Looks over a drawn scene for what a person would stumble on: cut words, things outside the window, words over words,
 * targets that a gloved finger misses, and text below the contrast of WCAG 2.2, criterion 1.4.3 (4.5 to 1, large text 3
 * to 1).
 */
public final class SceneCheck {
    private static final double LEAST_TARGET = 48;
    private static final double LEAST_GAP = 8;
    private static final double SLACK = 1.0;
    /** The box of a letter is higher than the letter: so much of it may be cut unseen. */
    private static final double CUT = 4.0;

    private static final double CONTRAST = 4.5;
    private static final double CONTRAST_LARGE = 3;
    private static final double LARGE = 24;
    private static final double LARGE_BOLD = 18.66;

    private final Scene scene;
    private final List<String> faults = new ArrayList<>();
    private final List<Node> words = new ArrayList<>();
    private final List<Node> targets = new ArrayList<>();
    private final java.util.Map<Node, Bounds> seen = new java.util.HashMap<>();

    private SceneCheck(Scene scene) {
        this.scene = scene;
    }

    /** All faults in words; none is what a test asks for. Must be called on the window thread after a layout. */
    public static List<String> faults(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        var check = new SceneCheck(scene);
        check.walk(scene.getRoot());
        check.overlaps();
        check.gaps();
        return check.faults;
    }

    private void walk(Node node) {
        if (!node.isVisible() || node.getOpacity() == 0 || node.isDisable() && covered(node)) {
            return;
        }
        if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
            words.add(labeled);
            cut(labeled);
            stickingOut(labeled);
            broken(labeled);
            contrast(labeled, labeled.getTextFill(), labeled.getFont());
        }
        if (node instanceof TextInputControl || node instanceof ButtonBase || node instanceof Press) {
            targets.add(node);
            target(node);
        }
        if (node instanceof Labeled || node instanceof TextInputControl || node instanceof Press) {
            outside(node);
        }
        if (node instanceof Parent parent && !(node instanceof TextInputControl)) {
            parent.getChildrenUnmodifiable().forEach(this::walk);
        }
    }

    /** What lies under a veil is out of reach and half dark: it is not judged. */
    private boolean covered(Node node) {
        return node instanceof javafx.scene.layout.StackPane
                && node.getParent() instanceof fairflame.screen.kit.Veil veil
                && veil.covered();
    }

    private void cut(Labeled labeled) {
        for (var child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text text && text.getStyleClass().contains("text")) {
                if (!text.getText()
                        .replaceAll("\\s+", " ")
                        .equals(labeled.getText().replaceAll("\\s+", " "))) {
                    faults.add("cut words: '" + labeled.getText() + "' is drawn as '" + text.getText() + "'"
                            + at(labeled));
                }
                var stands = text.getBoundsInParent();
                if (stands.getMinY() < -CUT || stands.getMaxY() > labeled.getHeight() + CUT) {
                    faults.add("words cut above or below: '" + labeled.getText() + "'" + at(labeled));
                }
                var drawn = text.getLayoutBounds();
                if (drawn.getHeight() > labeled.getHeight() + SLACK || drawn.getWidth() > labeled.getWidth() + SLACK) {
                    faults.add("words larger than their place: '" + labeled.getText() + "'" + at(labeled));
                }
            }
        }
    }

    /** A word broken in two because its place is narrower than it. */
    private void broken(Labeled labeled) {
        if (!labeled.isWrapText()) {
            return;
        }
        for (var word : labeled.getText().split("\\s+")) {
            var alone = new Text(word);
            alone.setFont(labeled.getFont());
            if (alone.getLayoutBounds().getWidth() > labeled.getWidth() + SLACK) {
                faults.add("broken word '" + word + "': " + name(labeled) + at(labeled));
            }
        }
    }

    /** Words that stick out of the filled or framed box that they stand in. */
    private void stickingOut(Labeled labeled) {
        var bounds = labeled.localToScene(labeled.getLayoutBounds());
        for (var up = labeled.getParent();
                up != null && !up.getStyleClass().contains("viewport");
                up = up.getParent()) {
            if (up instanceof javafx.scene.layout.Region region && region.getBackground() != null) {
                var box = up.localToScene(up.getLayoutBounds());
                if (bounds.getMinY() < box.getMinY() - SLACK
                        || bounds.getMaxY() > box.getMaxY() + SLACK
                        || bounds.getMinX() < box.getMinX() - SLACK
                        || bounds.getMaxX() > box.getMaxX() + SLACK) {
                    faults.add("words stick out of their box: " + name(labeled) + at(labeled));
                    return;
                }
            }
        }
    }

    private void outside(Node node) {
        var bounds = node.localToScene(node.getLayoutBounds());
        var scroll = scrollAround(node);
        var window = scroll == null
                ? new BoundingBox(0, 0, scene.getWidth(), scene.getHeight())
                : scroll.localToScene(scroll.getLayoutBounds());
        var wide = bounds.getMinX() < window.getMinX() - SLACK || bounds.getMaxX() > window.getMaxX() + SLACK;
        var high = scroll == null
                && (bounds.getMinY() < window.getMinY() - SLACK || bounds.getMaxY() > window.getMaxY() + SLACK);
        if (wide && (scroll == null || scroll.getHbarPolicy() == ScrollPane.ScrollBarPolicy.NEVER) || high) {
            faults.add("outside its place: " + name(node) + at(node));
        }
    }

    private static ScrollPane scrollAround(Node node) {
        for (var up = node.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane scroll) {
                return scroll;
            }
        }
        return null;
    }

    private void target(Node node) {
        var bounds = node.getLayoutBounds();
        if (bounds.getWidth() < LEAST_TARGET - 0.5 || bounds.getHeight() < LEAST_TARGET - 0.5) {
            faults.add("target of " + Math.round(bounds.getWidth()) + " by " + Math.round(bounds.getHeight()) + ": "
                    + name(node) + at(node));
        }
        if (node.getAccessibleText() == null
                && !(node instanceof Labeled labeled && !labeled.getText().isEmpty())) {
            faults.add("no words for a screen reader: " + name(node) + at(node));
        }
    }

    private Bounds seen(Node node) {
        if (!seen.containsKey(node)) {
            seen.put(node, look(node));
        }
        return seen.get(node);
    }

    /** What is seen of a node inside the viewports around it; null for nothing. */
    private Bounds look(Node node) {
        Bounds bounds = node.localToScene(node.getLayoutBounds());
        for (var up = node.getParent(); up != null && bounds != null; up = up.getParent()) {
            if (up.getStyleClass().contains("viewport")) {
                bounds = common(bounds, up.localToScene(up.getLayoutBounds()));
            }
        }
        return bounds;
    }

    private static Bounds common(Bounds one, Bounds other) {
        var left = Math.max(one.getMinX(), other.getMinX());
        var top = Math.max(one.getMinY(), other.getMinY());
        var right = Math.min(one.getMaxX(), other.getMaxX());
        var bottom = Math.min(one.getMaxY(), other.getMaxY());
        return right - left <= SLACK || bottom - top <= SLACK
                ? null
                : new BoundingBox(left, top, right - left, bottom - top);
    }

    private void overlaps() {
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                overlap(words.get(i), words.get(j));
            }
        }
    }

    private void overlap(Node one, Node other) {
        var a = seen(one);
        var b = seen(other);
        if (a != null && b != null && common(a, b) != null && !within(one, other) && !within(other, one)) {
            faults.add("words over words: " + name(one) + at(one) + " and " + name(other) + at(other));
        }
    }

    private void gaps() {
        for (int i = 0; i < targets.size(); i++) {
            for (int j = i + 1; j < targets.size(); j++) {
                var one = targets.get(i);
                var other = targets.get(j);
                var a = seen(one);
                var b = seen(other);
                if (a == null || b == null) {
                    continue;
                }
                var apart = Math.max(
                        Math.max(a.getMinX() - b.getMaxX(), b.getMinX() - a.getMaxX()),
                        Math.max(a.getMinY() - b.getMaxY(), b.getMinY() - a.getMaxY()));
                if (apart < LEAST_GAP - 0.6 && !within(one, other) && !within(other, one)) {
                    faults.add("targets " + Math.round(apart) + " px apart: " + name(one) + at(one) + " and "
                            + name(other) + at(other));
                }
            }
        }
    }

    private static boolean within(Node inner, Node outer) {
        for (Node up = inner; up != null; up = up.getParent()) {
            if (up == outer) {
                return true;
            }
        }
        return false;
    }

    private void contrast(Node node, javafx.scene.paint.Paint fill, javafx.scene.text.Font font) {
        if (!(fill instanceof Color ink)) {
            return;
        }
        var ratio = fairflame.screen.look.Contrast.ratio(ink, ground(node));
        var bold = font.getStyle().contains("Bold");
        var least = font.getSize() >= LARGE || bold && font.getSize() >= LARGE_BOLD ? CONTRAST_LARGE : CONTRAST;
        if (ratio < least) {
            faults.add(String.format(
                    java.util.Locale.ROOT, "contrast %.2f below %.1f: %s%s", ratio, least, name(node), at(node)));
        }
    }

    /** The colour behind a node: fills of the nodes around it laid over each other from the window up. */
    private static Color ground(Node node) {
        var fills = new ArrayList<Color>();
        for (Node up = node; up != null; up = up.getParent()) {
            if (up instanceof javafx.scene.layout.Region region && region.getBackground() != null) {
                var layers = region.getBackground().getFills();
                for (int i = layers.size() - 1; i >= 0; i--) {
                    if (layers.get(i).getFill() instanceof Color color && color.getOpacity() > 0) {
                        fills.add(color);
                    }
                }
            }
            if (!fills.isEmpty() && fills.get(fills.size() - 1).isOpaque()) {
                break;
            }
        }
        var ground = Color.WHITE;
        for (int i = fills.size() - 1; i >= 0; i--) {
            ground = fairflame.screen.look.Contrast.over(fills.get(i), ground);
        }
        return ground;
    }

    private static String name(Node node) {
        if (node instanceof Labeled labeled && !labeled.getText().isEmpty()) {
            return "'" + labeled.getText() + "'";
        }
        var text = node.getAccessibleText();
        return node.getClass().getSimpleName()
                + (node.getId() == null ? "" : "#" + node.getId())
                + (text == null ? "" : " '" + text + "'");
    }

    private static String at(Node node) {
        var bounds = node.localToScene(node.getLayoutBounds());
        return String.format(
                java.util.Locale.ROOT,
                " at %.0f,%.0f %.0fx%.0f",
                bounds.getMinX(),
                bounds.getMinY(),
                bounds.getWidth(),
                bounds.getHeight());
    }
}
