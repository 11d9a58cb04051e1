package fairflame.screen.kit;

import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** Words to choose from, as large keys that wrap. */
public final class Chips extends FlowPane {
    private static final double LEAST_TARGET = 48;

    private final ToggleGroup group = new ToggleGroup();

    public Chips() {
        super(Texts.GAP, Texts.GAP);
        setMinHeight(USE_PREF_SIZE);
        // A flow pane would ask for the width of its widest key; ours wrap their words instead.
        setMinWidth(0);
    }

    /** A key of which only one is chosen at a time. */
    public ToggleButton one(String id, String words, boolean chosen, Runnable take) {
        var key = key(id, words, chosen);
        key.setToggleGroup(group);
        key.setOnAction(event -> {
            key.setSelected(true);
            take.run();
        });
        return key;
    }

    /** A key that is chosen or not, whatever the others are. */
    public ToggleButton any(String id, String words, boolean chosen, Consumer<Boolean> take) {
        var key = key(id, words, chosen);
        key.setOnAction(event -> take.accept(key.isSelected()));
        return key;
    }

    private ToggleButton key(String id, String words, boolean chosen) {
        var key = new ToggleButton(words);
        key.setId(id);
        key.setSelected(chosen);
        key.setWrapText(true);
        key.setMinHeight(USE_PREF_SIZE);
        key.setMinWidth(LEAST_TARGET);
        key.maxWidthProperty().bind(widthProperty());
        getChildren().add(key);
        return key;
    }

    /** A set of words with one added or taken away, as the draft keeps it. */
    public static String toggled(Set<String> words, String word, boolean on) {
        var copy = new java.util.TreeSet<>(words);
        if (on) {
            copy.add(word);
        } else {
            copy.remove(word);
        }
        return String.join(",", copy);
    }
}
