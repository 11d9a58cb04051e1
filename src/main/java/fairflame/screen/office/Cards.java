package fairflame.screen.office;

import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Cards, rows and lines that the pages of the office share. */
final class Cards {
    private Cards() {}

    /** A card with its title. */
    static VBox card(String title, Node... content) {
        var card = Texts.column(10, Texts.words(title, "large", "strong"));
        card.getChildren().addAll(content);
        card.getStyleClass().add("card");
        card.setPadding(new Insets(14));
        return card;
    }

    /** Heading and note on top of a page. */
    static VBox head(String title, String note) {
        return Texts.column(2, Texts.words(title, "heading"), Texts.words(note, "slate"));
    }

    /** Words at the left, a figure at the right edge. */
    static HBox figure(Label words, String figure, String... styles) {
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        words.setMinWidth(0);
        var right = Texts.line(figure, styles);
        right.getStyleClass().add("figure");
        var row = Texts.across(12, words, right);
        row.setAlignment(Pos.TOP_LEFT);
        return row;
    }

    /** Two lines of words, taking what is left of the width. */
    static VBox twoLines(String first, String second) {
        var text = Texts.column(0, Texts.words(first, "semi"));
        if (!second.isBlank()) {
            text.getChildren().add(Texts.words(second, "small", "slate"));
        }
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        text.setAlignment(Pos.CENTER_LEFT);
        return text;
    }

    /** A row that leads to a visit's file; without a visit it leads nowhere and is no target. */
    static HBox leading(String id, String told, String visit, Consumer<String> file, Node... content) {
        if (visit.isEmpty()) {
            var row = Texts.across(Texts.GAP, content);
            row.getStyleClass().add("row");
            row.setId(id);
            return row;
        }
        var press = new Press(told, () -> file.accept(visit), content);
        press.setId(id);
        return press.styled("row");
    }

    /** What was done, shown while there is something to say. */
    static Label said(String id, ObservableValue<String> words) {
        return shown(id, words, "lagoon");
    }

    /** Why something was refused, shown while it is. */
    static Label refused(String id, ObservableValue<String> words) {
        return shown(id, words, "refusal");
    }

    private static Label shown(String id, ObservableValue<String> words, String style) {
        var label = Texts.words("", style);
        label.setId(id);
        label.textProperty().bind(words);
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }

    /** Keys side by side that wrap. */
    static FlowPane keys(Node... keys) {
        var pane = new FlowPane(Texts.GAP, Texts.GAP, keys);
        pane.setMinWidth(0);
        return pane;
    }
}
