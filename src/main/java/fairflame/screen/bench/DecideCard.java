package fairflame.screen.bench;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.layout.VBox;

/** What the customer tells of the pool and its costs, so that the quote can show the arithmetic of the decision. */
final class DecideCard extends VBox {
    private static final double LEAST = 150;

    private final BenchModel model;
    private final Words words;

    DecideCard(BenchModel model, Words words) {
        super(12);
        this.model = model;
        this.words = words;
        getChildren()
                .addAll(
                        Texts.words(words.say("step.decide"), "large", "strong"),
                        Texts.words(words.say("decide.note"), "small", "slate"),
                        Texts.words(words.say("decide.warm-up"), "strong"),
                        slips(Terms.WARM_UP),
                        Texts.words(words.say("decide.new-heater"), "strong"),
                        slips(Terms.NEW_HEATER));
    }

    private Columns slips(List<String> fields) {
        return new Columns(LEAST, 12, fields.stream().map(this::slip).toList());
    }

    private Slip slip(String field) {
        return new Slip(field, words.say(field, Terms.symbol(field)), model.typed(field), model.allowed(field));
    }
}
