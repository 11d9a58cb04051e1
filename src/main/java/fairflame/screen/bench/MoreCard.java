package fairflame.screen.bench;

import fairflame.diagnosis.Check;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.Comparator;
import java.util.Locale;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every check there is, in the usual order of work, found by a few letters. */
final class MoreCard extends VBox {
    private final BenchModel model;
    private final VBox rows = new VBox(Texts.GAP);
    private final SimpleStringProperty wanted = new SimpleStringProperty("");

    MoreCard(BenchModel model, Words words) {
        super(12);
        this.model = model;
        var search = new TextField();
        search.setId("more-search");
        search.setPromptText(words.say("more.search"));
        search.setAccessibleText(words.say("more.search"));
        search.textProperty().bindBidirectional(wanted);
        getChildren().addAll(Texts.words(words.say("step.more"), "large", "strong"), search, rows);
        wanted.addListener((property, before, now) -> fill());
        fill();
    }

    private void fill() {
        var letters = wanted.get().strip().toLowerCase(Locale.ROOT);
        rows.getChildren()
                .setAll(model.work().knowledge().checks().stream()
                        .filter(check -> check.title().toLowerCase(Locale.ROOT).contains(letters))
                        .sorted(Comparator.comparingInt(check -> check.effort().step()))
                        .map(this::row)
                        .toList());
    }

    private Press row(Check check) {
        var text = Texts.words(check.title());
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(0);
        var press = new Press(check.title(), () -> model.step().set(Steps.ofCheck(check.id())), text);
        press.setId("more-" + check.id());
        return press.styled("row");
    }
}
