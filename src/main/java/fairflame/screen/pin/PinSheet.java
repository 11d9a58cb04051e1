package fairflame.screen.pin;

import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.geometry.Insets;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.VBox;

/** Asks for the technician's digits before the customer's page may be left. */
public final class PinSheet extends VBox {
    private static final int COLUMNS = 3;
    private static final String FACES = "123456789";

    public PinSheet(Words words, PinWork work, Runnable through, Runnable back) {
        super(12);
        getStyleClass().add("sheet");
        setPadding(new Insets(24));
        var digits = new PasswordField();
        digits.setId("pin");
        digits.setAccessibleText(words.say("pin.title"));
        var wrong = Texts.words("", "refusal");
        var grid = Texts.keys(COLUMNS);
        for (int i = 0; i < FACES.length(); i++) {
            grid.add(key(FACES.substring(i, i + 1), digits), i % COLUMNS, i / COLUMNS);
        }
        grid.add(key("0", digits), 1, COLUMNS);
        Runnable attempt = () -> {
            var answer = work.opens(digits.getText());
            digits.clear();
            if (answer.opens()) {
                through.run();
            } else {
                wrong.setText(answer.seconds() == 0 ? words.say("pin.wrong") : words.say("pin.wait", answer.seconds()));
            }
        };
        digits.setOnAction(event -> attempt.run());
        var open = Texts.button(words.say("pin.open"), attempt, "act");
        open.setId("pin-open");
        open.setMaxWidth(Double.MAX_VALUE);
        var stay = Texts.button(words.say("pin.stay"), back);
        stay.setId("pin-stay");
        stay.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(Texts.words(words.say("pin.title"), "large", "strong"), digits, wrong, grid, open, stay);
        if (work.state() == PinWork.State.DEMO) {
            getChildren().add(1, Texts.words(words.say("pin.demo"), "slate"));
        }
    }

    private static javafx.scene.control.Button key(String face, PasswordField digits) {
        var key = Texts.button(face, () -> digits.appendText(face), "key", "digit");
        key.setId("pin-" + face);
        key.setFocusTraversable(false);
        return key;
    }
}
