package fairflame.screen.kit;

import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.VBox;

/** A field for a text of several lines, with its name above and what is allowed right below. Tab leads out of it. */
public final class LinesSlip extends VBox {
    private static final int FEWEST = 2;
    private static final int MOST = 9;
    private static final int ACROSS = 56;

    private final TextArea field = new TextArea();
    private final Label refusal = Texts.words("", "refusal");

    /**
     * A field bound to a value.
     *
     * @param allowed what is wrong and what is allowed; empty when all is well
     */
    public LinesSlip(String id, String title, StringProperty value, ObservableValue<String> allowed) {
        super(2);
        field.setId(id);
        field.setWrapText(true);
        field.setPrefRowCount(rows(value.get()));
        field.textProperty().bindBidirectional(value);
        field.setAccessibleText(title);
        // Tab and Shift+Tab lead on as they do from every other field; a tab has no place in these texts.
        field.addEventFilter(javafx.scene.input.KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == javafx.scene.input.KeyCode.TAB && !event.isControlDown()) {
                event.consume();
                field.fireEvent(new javafx.scene.input.KeyEvent(
                        javafx.scene.input.KeyEvent.KEY_PRESSED,
                        "",
                        "",
                        javafx.scene.input.KeyCode.TAB,
                        event.isShiftDown(),
                        true,
                        false,
                        false));
            }
        });
        var label = Texts.words(title, "small", "slate");
        label.setLabelFor(field);
        getChildren().addAll(label, field);
        show(allowed.getValue());
        allowed.addListener((property, before, now) -> show(now));
    }

    private static int rows(String text) {
        var rows = text.lines().mapToInt(line -> 1 + line.length() / ACROSS).sum();
        return Math.max(FEWEST, Math.min(MOST, rows + 1));
    }

    private void show(String text) {
        field.getStyleClass().remove("refused");
        getChildren().remove(refusal);
        if (!text.isEmpty()) {
            refusal.setText(text);
            field.getStyleClass().add("refused");
            getChildren().add(refusal);
        }
        field.setAccessibleHelp(text);
    }

    public TextArea field() {
        return field;
    }
}
