package fairflame.screen.file;

import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.scene.layout.VBox;

/** An unsigned quote beside what it would come to at today's prices; a new revision only when asked for. */
public final class RepriceCard extends Card {
    private final Form form = new Form();

    /** The card of an unsigned quote; {@code done} is told the key of what was done. */
    public RepriceCard(FileWork work, String quote, Words words, java.util.function.Consumer<String> done) {
        super(words, words.say("file.reprice"));
        add(Texts.words(words.say("file.reprice-why"), "slate"));
        var found = new VBox(Texts.GAP);
        add(
                whole(form),
                keys(
                        key("reprice-show", () -> form.submit(() -> show(work, quote, found))),
                        key(
                                "reprice-make",
                                () -> {
                                    if (form.submit(() -> work.reprice(quote))) {
                                        done.accept("file.said.repriced");
                                    }
                                },
                                "act")));
        add(found);
    }

    private void show(FileWork work, String quote, VBox found) {
        found.getChildren().clear();
        var differences = work.differences(quote);
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
