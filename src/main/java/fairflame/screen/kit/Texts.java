package fairflame.screen.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Short ways to write labels, buttons and boxes in the house's type. */
public final class Texts {
    /** Least distance between two things to touch, pixels. */
    public static final double GAP = 8;

    private Texts() {}

    /** Words that wrap, with style classes of the sheet. */
    public static Label words(String text, String... styles) {
        var label = new WrappedWords(text);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Words or figures that stay on one line. */
    public static Label line(String text, String... styles) {
        var label = new Label(text);
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    public static Button button(String text, Runnable action, String... styles) {
        var button = new Button(text);
        button.getStyleClass().addAll(styles);
        button.setWrapText(true);
        button.setOnAction(event -> action.run());
        button.setMinHeight(Region.USE_PREF_SIZE);
        return button;
    }

    /** A grid of keys in columns of one width. */
    public static GridPane keys(int columns) {
        var grid = new GridPane();
        grid.setHgap(GAP);
        grid.setVgap(GAP);
        for (int i = 0; i < columns; i++) {
            var column = new ColumnConstraints();
            column.setPercentWidth(100.0 / columns);
            column.setHgrow(Priority.ALWAYS);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    public static Region rule(String style) {
        var rule = new Region();
        rule.getStyleClass().add(style);
        return rule;
    }

    /** Takes all the room that is left. */
    public static Region spring() {
        var spring = new Region();
        HBox.setHgrow(spring, Priority.ALWAYS);
        VBox.setVgrow(spring, Priority.ALWAYS);
        return spring;
    }

    public static VBox column(double gap, javafx.scene.Node... nodes) {
        var box = new VBox(gap, nodes);
        box.setFillWidth(true);
        return box;
    }

    public static HBox across(double gap, javafx.scene.Node... nodes) {
        var box = new HBox(gap, nodes);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    /** Scrolls by finger, keyboard or bar; never sideways. */
    public static ScrollPane scrolling(Region content) {
        var scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setPannable(true);
        scroll.setMinHeight(0);
        return scroll;
    }
}
