package fairflame.screen.bench;

import fairflame.quote.Basis;
import fairflame.screen.kit.PaperSheet;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The paper on the right: the quote while it can be priced, else in pencil what is still missing. */
final class PaperPane extends VBox {
    private final BenchModel model;
    private final Words words;
    private final BiConsumer<String, List<Basis>> why;
    private final StackPane place = new StackPane();
    private final Button handOver;

    PaperPane(BenchModel model, Words words, Ties ties, BiConsumer<String, List<Basis>> why, Runnable hand) {
        super(Texts.GAP);
        this.model = model;
        this.words = words;
        this.why = why;
        var scroll = Texts.scrolling(place);
        // Room for the shadow of the sheet.
        place.setPadding(new Insets(4, 10, 14, 8));
        VBox.setVgrow(scroll, Priority.ALWAYS);
        handOver = Texts.button(words.say("bench.hand-over"), hand, "act");
        handOver.setId("hand-over");
        handOver.setMaxWidth(Double.MAX_VALUE);
        getChildren().addAll(scroll, handOver);
        ties.on(model.judged(), judged -> fill());
        ties.later(model.choice(), choice -> fill());
    }

    private void fill() {
        var quote = model.judged().get().flatMap(Judged::quote);
        handOver.setDisable(quote.isEmpty());
        if (quote.isEmpty()) {
            place.getChildren().setAll(pencilled());
        } else if (!place.getChildren().isEmpty() && place.getChildren().get(0) instanceof PaperSheet sheet) {
            sheet.show(quote.get(), model.choice().get());
        } else {
            var asked = new PaperSheet.Asked(id -> model.choice().set(id), why);
            place.getChildren()
                    .setAll(new PaperSheet(quote.get(), model.choice().get(), words, asked));
        }
    }

    private Region pencilled() {
        var sheet = Texts.column(
                12,
                Texts.words(words.say("paper.empty"), "large", "strong"),
                Texts.rule("rule-strong"),
                Texts.words(
                        model.judged()
                                .get()
                                .map(Judged::notPriced)
                                .filter(words -> !words.isEmpty())
                                .orElse(words.say("paper.begin")),
                        "open"));
        model.refused().forEach((field, allowed) -> {
            if (model.draft().has(field)) {
                sheet.getChildren()
                        .add(Texts.words(
                                words.say("paper.refused", model.draft().get(field), allowed), "refusal"));
            }
        });
        sheet.getStyleClass().add("sheet");
        sheet.setPadding(new Insets(20));
        return sheet;
    }
}
