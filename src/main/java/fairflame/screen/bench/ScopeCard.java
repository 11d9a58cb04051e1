package fairflame.screen.bench;

import fairflame.quote.Choice;
import fairflame.quote.Work;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** The scope of the open choice: tasks with their reason and who may do them, and the tests afterwards. */
final class ScopeCard extends VBox {
    private final BenchModel model;
    private final Words words;

    ScopeCard(BenchModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        ties.on(model.judged(), judged -> fill());
        ties.later(model.choice(), choice -> fill());
    }

    private void fill() {
        getChildren().setAll(Texts.words(words.say("step.scope"), "large", "strong"));
        var open = open();
        if (open.isEmpty()) {
            getChildren().add(Texts.words(words.say("scope.none")));
            return;
        }
        var choice = open.get();
        getChildren().add(Texts.words(choice.title(), "strong"));
        choice.work().forEach(work -> getChildren().add(task(work)));
        if (!choice.tests().isEmpty()) {
            getChildren().add(Texts.words(words.say("scope.tests"), "strong"));
            choice.tests().forEach(test -> getChildren().add(Texts.words(words.sayOr("test." + test, test))));
        }
        if (!choice.arithmetic().isEmpty()) {
            getChildren().add(Texts.words(words.say("scope.arithmetic"), "strong"));
            choice.arithmetic().forEach(sentence -> getChildren().add(Texts.words(sentence)));
        }
    }

    private Optional<Choice> open() {
        return model.judged().get().flatMap(Judged::quote).stream()
                .flatMap(quote -> quote.choices().stream())
                .filter(choice -> choice.id().equals(model.choice().get()))
                .findFirst();
    }

    private VBox task(Work work) {
        var who = work.trades().stream()
                .map(trade -> words.say("trade." + trade.name()))
                .sorted()
                .collect(Collectors.joining(", "));
        var box = Texts.column(
                2,
                Texts.words(work.title(), "semi"),
                Texts.words(work.reason(), "small"),
                Texts.words(who, "small", "slate"));
        box.getStyleClass().add("card");
        box.setPadding(new Insets(10, 12, 10, 12));
        return box;
    }
}
