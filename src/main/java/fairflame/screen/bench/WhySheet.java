package fairflame.screen.bench;

import fairflame.quote.Basis;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.layout.VBox;

/** The chain of grounds behind a figure or a cause, each with its source. */
final class WhySheet extends VBox {
    WhySheet(String title, List<Basis> grounds, Words words, Runnable lift) {
        super(16);
        var box = Texts.column(12, Texts.words(words.say("why.title", title), "large", "strong"));
        grounds.forEach(ground -> box.getChildren().add(ground(ground, words)));
        var close = Texts.button(words.say("why.close"), lift);
        close.setId("why-close");
        getChildren().addAll(Texts.scrolling(box), close);
        getStyleClass().add("sheet");
        setPadding(new Insets(24));
    }

    private static VBox ground(Basis ground, Words words) {
        var told = Texts.column(2);
        if (!ground.what().isEmpty()) {
            var what = words.sayOr("basis." + ground.what().replace(' ', '-'), ground.what());
            told.getChildren().add(Texts.words(what, "small", "slate"));
        }
        told.getChildren().add(Texts.words(ground.words()));
        if (!ground.source().isEmpty()) {
            told.getChildren().add(Texts.words(words.say("why.source", ground.source()), "small", "slate"));
        }
        return told;
    }
}
