package fairflame.screen.kit;

import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A field with its name above and, when its value is refused, what is allowed right below. */
public final class Slip extends VBox {
    private final TextField field = new TextField();
    private final Label refusal = Texts.words("", "refusal");

    /**
     * A field bound to a value.
     *
     * @param allowed what is wrong and what is allowed; empty when all is well
     */
    public Slip(String id, String title, StringProperty value, ObservableValue<String> allowed) {
        super(2);
        field.setId(id);
        field.textProperty().bindBidirectional(value);
        field.setAccessibleText(title);
        var label = Texts.words(title, "small", "slate");
        label.setLabelFor(field);
        getChildren().addAll(label, field);
        show(allowed.getValue());
        allowed.addListener((property, before, now) -> show(now));
    }

    private void show(String text) {
        var wrong = text != null && !text.isEmpty();
        field.getStyleClass().remove("refused");
        getChildren().remove(refusal);
        if (wrong) {
            refusal.setText(text);
            field.getStyleClass().add("refused");
            getChildren().add(refusal);
        }
        field.setAccessibleHelp(wrong ? text : "");
    }

    public TextField field() {
        return field;
    }

    public Slip prompt(String words) {
        field.setPromptText(words);
        return this;
    }
}
