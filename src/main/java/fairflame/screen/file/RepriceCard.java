package fairflame.screen.file;

import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import fairflame.visit.Repricing;
import java.util.List;
import javafx.scene.layout.VBox;

/** An unsigned quote beside what it would come to at today's prices; a new revision only when asked for. */
public final class RepriceCard extends Card {
    private final VBox found = new VBox(Texts.GAP);

    public RepriceCard(RepriceModel model, Words words) {
        super(words, words.say("file.reprice"));
        add(
                Texts.words(words.say("file.reprice-why"), "slate"),
                whole(model.form()),
                keys(key("reprice-show", model::show), key("reprice-make", model::make, "act")),
                found);
        model.found().addListener((property, before, now) -> {
            found.getChildren().clear();
            now.ifPresent(this::show);
        });
    }

    private void show(List<Repricing.Difference> differences) {
        if (differences.isEmpty()) {
            found.getChildren().add(Texts.words(words.say("file.reprice-same"), "moss"));
        }
        differences.forEach(difference -> {
            found.getChildren()
                    .add(Texts.words(
                            words.say(
                                    "file.reprice-choice",
                                    difference.choice(),
                                    words.money(difference.then()),
                                    words.money(difference.now())),
                            "semi"));
            difference.lines().forEach(line -> found.getChildren().add(Texts.words(line, "small", "slate")));
        });
    }
}
