package fairflame.screen;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.screen.kit.Press;
import fairflame.screen.look.Look;
import fairflame.screen.look.Theme;
import java.util.Locale;
import java.util.Objects;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;

/** A person at a real window: presses what can be seen, types, draws. */
final class Hand implements AutoCloseable {
    private static final int MOST_TABS = 200;
    private final FxRobot robot = new FxRobot();
    private final Stage stage;
    private final Scene scene;
    private final ShellModel model;
    private final String name;
    private int touches;
    private int letters;

    /** A window on a shop. */
    Hand(ScreenWork work, int width, int height, Theme theme, String language) {
        this(work, width, height, theme, language, details -> {});
    }

    /** As above; what starts a shop of one's own is told. */
    Hand(
            ScreenWork work,
            int width,
            int height,
            Theme theme,
            String language,
            java.util.function.Consumer<fairflame.visit.OwnShop.Details> begin) {
        Toolkit.start();
        name = width + "x" + height + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + language;
        work.remember("language", language);
        model = new ShellModel(work);
        var built = Toolkit.on(() -> {
            var look = new Look();
            look.theme().set(theme);
            var shell = new Shell(model, look, begin::accept);
            var fresh = new Scene(shell, width, height);
            look.dress(fresh);
            shell.keys(fresh);
            var window = new Stage();
            window.setScene(fresh);
            window.setX(0);
            window.setY(0);
            window.show();
            return window;
        });
        stage = built;
        scene = built.getScene();
        Toolkit.settle();
    }

    /** How often something was pressed so far; scrolling is not counted. */
    int touches() {
        return touches;
    }

    /** How many letters were typed so far. */
    int letters() {
        return letters;
    }

    ShellModel model() {
        return model;
    }

    Scene scene() {
        return scene;
    }

    /** The node with this id; fails when there is none to be seen. */
    Node find(String id) {
        return Toolkit.on(() -> {
            return search(scene.getRoot(), id)
                    .orElseThrow(() -> new AssertionError("nothing to press called " + id + " in " + seen()));
        });
    }

    boolean has(String id) {
        return Toolkit.on(() -> search(scene.getRoot(), id).isPresent());
    }

    private static java.util.Optional<Node> search(Node node, String id) {
        if (!node.isVisible()) {
            return java.util.Optional.empty();
        }
        if (id.equals(node.getId()) && !node.isDisabled()) {
            return java.util.Optional.of(node);
        }
        return node instanceof javafx.scene.Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .map(child -> search(child, id))
                        .flatMap(java.util.Optional::stream)
                        .findFirst()
                : java.util.Optional.empty();
    }

    private String seen() {
        var ids = new java.util.TreeSet<String>();
        collect(scene.getRoot(), ids);
        return ids.toString();
    }

    private static void collect(Node node, java.util.Set<String> ids) {
        if (node.getId() != null && (node instanceof Press || node instanceof javafx.scene.control.Control)) {
            ids.add(node.getId() + (node.isDisabled() ? " (off)" : ""));
        }
        if (node instanceof javafx.scene.Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, ids));
        }
    }

    /** Brings a node into the middle of the scrolled places around it. */
    private void reveal(Node node) {
        Toolkit.run(() -> {
            for (var up = node.getParent(); up != null; up = up.getParent()) {
                if (up instanceof ScrollPane scroll && scroll.getContent() != null) {
                    var content = scroll.getContent();
                    var middle = content.sceneToLocal(node.localToScene(node.getLayoutBounds()))
                            .getCenterY();
                    var room = content.getLayoutBounds().getHeight()
                            - scroll.getViewportBounds().getHeight();
                    var wanted = middle - scroll.getViewportBounds().getHeight() / 2;
                    scroll.setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, wanted / room)));
                }
            }
            scene.getRoot().layout();
        });
    }

    /** Presses with the mouse where the node is drawn, and waits for what comes of it. */
    Hand press(String id) {
        begin(id);
        Toolkit.settle();
        return this;
    }

    /** Presses with the mouse and waits for nothing: long work goes on. */
    Hand begin(String id) {
        var node = find(id);
        reveal(node);
        robot.clickOn(node, MouseButton.PRIMARY);
        touches++;
        Toolkit.drawn();
        return this;
    }

    /** Clicks into a field and types by keyboard what is not there yet. */
    Hand type(String id, String text) {
        var node = (TextInputControl) find(id);
        reveal(node);
        robot.clickOn(node, MouseButton.PRIMARY);
        touches++;
        letters += text.length();
        // Typed through the control: the headless keyboard has only the keys of one layout.
        Toolkit.run(() -> {
            node.clear();
            for (var letter : text.split("")) {
                node.appendText(letter);
            }
        });
        Toolkit.settle();
        return this;
    }

    /** Strikes a key and waits for nothing: long work goes on. */
    Hand strike(javafx.scene.input.KeyCode code) {
        robot.push(code);
        Toolkit.drawn();
        return this;
    }

    /** Writes into the field that has the keyboard. */
    Hand write(String text) {
        letters += text.length();
        // Typed through the control: the headless keyboard has only the keys of one layout.
        Toolkit.run(() -> {
            var field = (TextInputControl) Objects.requireNonNull(scene.getFocusOwner(), "a field with the keyboard");
            for (var letter : text.split("")) {
                field.appendText(letter);
            }
        });
        Toolkit.settle();
        return this;
    }

    /** Strikes a key. */
    Hand key(javafx.scene.input.KeyCode code) {
        robot.push(code);
        Toolkit.settle();
        return this;
    }

    /** Strikes keys together, such as Control and Z. */
    Hand keys(javafx.scene.input.KeyCode... codes) {
        robot.push(codes);
        Toolkit.settle();
        return this;
    }

    /** Draws a line across a node with the mouse held down. */
    Hand draw(String id) {
        var node = find(id);
        reveal(node);
        var box = Toolkit.on(() -> node.localToScreen(node.getLayoutBounds()));
        robot.moveTo(new Point2D(box.getMinX() + 40, box.getMinY() + 70));
        robot.press(MouseButton.PRIMARY);
        for (int i = 1; i <= 24; i++) {
            robot.moveTo(new Point2D(box.getMinX() + 40 + i * 10, box.getMinY() + 70 - 30 * Math.sin(i / 3.0)));
        }
        robot.release(MouseButton.PRIMARY);
        Toolkit.settle();
        return this;
    }

    /** Drags a node by so many pixels with the mouse held down. */
    Hand drag(String id, double right, double down) {
        var node = find(id);
        reveal(node);
        var box = Toolkit.on(() -> node.localToScreen(node.getLayoutBounds()));
        var from = new Point2D(box.getMinX() + 20, box.getCenterY());
        robot.moveTo(from);
        robot.press(MouseButton.PRIMARY);
        for (int i = 1; i <= 8; i++) {
            robot.moveTo(from.add(right * i / 8, down * i / 8));
        }
        robot.release(MouseButton.PRIMARY);
        Toolkit.settle();
        return this;
    }

    /** Goes on with the Tab key until a node has the keyboard. */
    Hand tab(String id) {
        for (int i = 0; i < MOST_TABS; i++) {
            if (Toolkit.on(() -> scene.getFocusOwner() != null
                    && id.equals(scene.getFocusOwner().getId()))) {
                return this;
            }
            key(javafx.scene.input.KeyCode.TAB);
        }
        throw new AssertionError("the Tab key never comes to " + id);
    }

    /** Lets a file go over a node; false when it is not taken. */
    boolean drop(String id, java.nio.file.Path file) {
        var node = find(id);
        reveal(node);
        var taken = Toolkit.on(() -> new FileDrop(node, java.util.List.of(file.toFile())).drop());
        Toolkit.settle();
        return taken;
    }

    /** From now on this person answers for the list of files. */
    PointedAt pointing() {
        var person = new PointedAt();
        Toolkit.run(() -> stage.getProperties().put(fairflame.screen.kit.Choosing.class, person));
        return person;
    }

    /** Takes a picture and looks the scene over; fails on anything cut, covered, too small or too faint. */
    Hand look(String what) {
        Toolkit.settle();
        return glance(what);
    }

    /** As {@link #look}, while long work goes on. */
    Hand glance(String what) {
        var faults = Toolkit.on(() -> {
            var found = SceneCheck.faults(scene);
            Shots.take(scene, what + "-" + name);
            return found;
        });
        assertThat(faults).as(what + " at " + name).isEmpty();
        return this;
    }

    /** The words that a label shows. */
    String words(String id) {
        return Toolkit.on(() -> {
            var node = Objects.requireNonNull(scene.getRoot().lookup("#" + id), id);
            return node instanceof javafx.scene.control.Labeled labeled ? labeled.getText() : node.getAccessibleText();
        });
    }

    @Override
    public void close() {
        Toolkit.run(stage::hide);
    }
}
