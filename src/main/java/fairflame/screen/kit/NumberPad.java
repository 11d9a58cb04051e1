package fairflame.screen.kit;

import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Large digits for gloves, with a key for each unit that the reading can be taken in. */
public final class NumberPad extends VBox {
    private static final List<List<String>> ROWS =
            List.of(List.of("7", "8", "9"), List.of("4", "5", "6"), List.of("1", "2", "3"), List.of(".", "0", "<"));
    private static final int COLUMNS = 3;
    private static final int LONGEST = 12;

    private final StringProperty typed;

    /**
     * A pad that types into {@code typed}.
     *
     * @param units spellings of the units; the chosen one is kept in {@code unit}
     * @param symbols as shown, in the same order
     */
    public NumberPad(StringProperty typed, StringProperty unit, List<String> units, List<String> symbols, Words words) {
        super(Texts.GAP);
        this.typed = typed;
        getChildren().add(unitKeys(unit, units, symbols, words));
        getChildren().add(digits(words));
    }

    private GridPane digits(Words words) {
        var grid = Texts.keys(COLUMNS);
        for (int row = 0; row < ROWS.size(); row++) {
            for (int column = 0; column < COLUMNS; column++) {
                grid.add(key(ROWS.get(row).get(column), words), column, row);
            }
        }
        return grid;
    }

    private Button key(String face, Words words) {
        var back = face.equals("<");
        var key = Texts.button(back ? words.say("pad.back") : face, () -> press(face), "key");
        key.getStyleClass().add(back ? "small" : "digit");
        key.setFocusTraversable(false);
        key.setId("key-" + (back ? "back" : face.equals(".") ? "point" : face));
        key.setAccessibleText(back ? words.say("pad.back") : face.equals(".") ? words.say("pad.point") : face);
        GridPane.setHgrow(key, Priority.ALWAYS);
        return key;
    }

    private void press(String face) {
        var text = typed.get();
        if (face.equals("<")) {
            typed.set(text.isEmpty() ? "" : text.substring(0, text.length() - 1));
        } else if (text.length() < LONGEST && !(face.equals(".") && text.contains("."))) {
            typed.set(text + face);
        }
    }

    private static FlowPane unitKeys(StringProperty unit, List<String> units, List<String> symbols, Words words) {
        var keys = new FlowPane(Texts.GAP, Texts.GAP);
        keys.setMinWidth(0);
        var group = new ToggleGroup();
        for (int i = 0; i < units.size(); i++) {
            var spelling = units.get(i);
            var key = new ToggleButton(symbols.get(i));
            key.getStyleClass().add("unit");
            key.setId("unit-" + spelling.replaceAll("[^a-z0-9]", "-"));
            key.setToggleGroup(group);
            key.setSelected(spelling.equals(unit.get()));
            key.setAccessibleText(words.say("pad.unit", symbols.get(i)));
            key.setOnAction(event -> {
                unit.set(spelling);
                key.setSelected(true);
            });
            keys.getChildren().add(key);
        }
        return keys;
    }
}
