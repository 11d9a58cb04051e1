package fairflame.screen.file;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A card of the file: a title, what is known, fields with what is allowed beside them, keys. */
class Card extends VBox {
    /** Narrowest field at the usual text size, pixels. */
    static final double LEAST = 150;

    private static final double GAP = 12;

    final Words words;

    /** A card with these words as its title. */
    Card(Words words, String title) {
        super(GAP);
        this.words = words;
        getStyleClass().add("card");
        setPadding(new Insets(14));
        add(Texts.words(title, "large", "strong"));
    }

    final void add(Node... nodes) {
        getChildren().addAll(nodes);
    }

    /** A field with the words of its own key. */
    final Slip slip(Form form, String field) {
        return slip(form, field, words.say("file." + field));
    }

    final Slip slip(Form form, String field, String title) {
        var slip = new Slip(field, title, form.value(field), said(form, field));
        form.problem(field).addListener((property, before, now) -> {
            if (!now.isNone()) {
                reveal(slip.field());
            }
        });
        return slip;
    }

    /** Leads to the field that was refused: it may lie outside what is seen. */
    private static void reveal(Node field) {
        field.requestFocus();
        for (var up = field.getParent(); up != null; up = up.getParent()) {
            if (up instanceof ScrollPane scroll && scroll.getContent() != null) {
                var content = scroll.getContent();
                var middle = content.sceneToLocal(field.localToScene(field.getLayoutBounds()))
                        .getCenterY();
                var seen = scroll.getViewportBounds().getHeight();
                var room = content.getLayoutBounds().getHeight() - seen;
                scroll.setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, (middle - seen / 2) / room)));
                return;
            }
        }
    }

    private ObservableValue<String> said(Form form, String field) {
        return form.problem(field).map(problem -> {
            if (problem.isNone()) {
                return "";
            }
            return problem.key().isEmpty() ? words.say("form.allowed", problem.allowed()) : words.say(problem.key());
        });
    }

    /** What belongs to no field of the form, above its key. */
    final Label whole(Form form) {
        var label = Texts.words("", "refusal");
        label.textProperty().bind(form.problem(Form.WHOLE).map(Problem::allowed));
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        return label;
    }

    final Button key(String id, Runnable act, String... styles) {
        return key(id, words.say("file." + id), act, styles);
    }

    static Button key(String id, String title, Runnable act, String... styles) {
        var key = Texts.button(title, act, styles);
        key.setId(id);
        return key;
    }

    static FlowPane keys(Node... keys) {
        var row = new FlowPane(Texts.GAP, Texts.GAP, keys);
        row.setMinWidth(0);
        return row;
    }

    /** A key that is on or off. */
    static ToggleButton toggle(String id, String title, BooleanProperty on) {
        var key = new ToggleButton(title);
        key.setId(id);
        key.getStyleClass().add("no");
        key.setWrapText(true);
        key.setMinHeight(USE_PREF_SIZE);
        key.selectedProperty().bindBidirectional(on);
        return key;
    }

    /** Words of which one is chosen, each with the text of {@code prefix + word}. */
    final Chips one(String id, String prefix, List<String> all, StringProperty chosen) {
        var chips = new Chips();
        for (var word : all) {
            chips.one(
                    id + "-" + word.replace(' ', '-'),
                    words.sayOr(prefix + word.replace(' ', '-'), word),
                    word.equals(chosen.get()),
                    () -> chosen.set(word));
        }
        return chips;
    }

    /** Words at the left and a figure at the right. */
    static HBox pair(String left, String right, String... styles) {
        var text = Texts.words(left, styles);
        text.setMinWidth(0);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        var figure = Texts.line(right, "figure");
        if (List.of(styles).contains("strong")) {
            figure.getStyleClass().add("strong");
        }
        var row = new HBox(16, text, figure);
        row.setAlignment(Pos.BASELINE_LEFT);
        return row;
    }
}
