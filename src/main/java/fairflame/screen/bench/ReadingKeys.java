package fairflame.screen.bench;

import fairflame.diagnosis.Answer;
import fairflame.diagnosis.Check;
import fairflame.quantity.Dimension;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

/** What can be done with a reading, always in reach below it. */
final class ReadingKeys extends FlowPane {
    private final BenchModel model;
    private final String field;

    ReadingKeys(BenchModel model, Words words, Check check, int number, Runnable onward) {
        super(Texts.GAP, Texts.GAP);
        setMinWidth(0);
        getStyleClass().add("tight");
        this.model = model;
        this.field = "reading." + number + ".value";
        var next = Texts.button(words.say("reading.onward"), onward, "act");
        next.setId("onward");
        getChildren().add(next);
        getChildren().add(key("not-measured", words.say("reading.not-measured"), "not measured"));
        if (check.answer() instanceof Answer.Figure answer && answer.unit().dimension() == Dimension.RESISTANCE) {
            getChildren().add(key("open-line", words.say("reading.open-line"), "open"));
        }
        var again = Texts.button(words.say("reading.again"), () -> model.again(check));
        again.setId("again");
        getChildren().add(again);
    }

    private Button key(String id, String words, String value) {
        var key = Texts.button(words, () -> model.history().change(draft -> draft.with(field, value)));
        key.setId(id);
        return key;
    }
}
