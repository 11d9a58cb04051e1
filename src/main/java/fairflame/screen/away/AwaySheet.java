package fairflame.screen.away;

import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Dropped;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Words;
import java.util.concurrent.Callable;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;

/** The sheet for a customer who is away: write the paper, read the one that came back. */
public final class AwaySheet extends StackPane {
    /** Widest that the sheet gets, pixels. */
    public static final double WIDEST = 640;

    private final AwayModel model;
    private final Words words;

    public AwaySheet(AwayModel model, Words words, Veil veil) {
        this.model = model;
        this.words = words;
        getStyleClass().add("sheet");
        setPadding(new Insets(24));
        var file = new Slip("away-file", words.say("away.file"), model.file(), model.refusal());
        var content = Texts.column(
                14,
                Texts.words(words.say("away.title", model.quote()), "large", "strong"),
                Texts.words(words.say("away.what")),
                key("away-write", "away.write", model::write, "act"),
                sent(),
                Texts.rule("rule"),
                Texts.words(words.say("away.back"), "strong"),
                Texts.words(words.say("away.proof"), "slate"),
                file,
                new FlowPane(
                        Texts.GAP,
                        Texts.GAP,
                        key("away-choose", "away.choose", this::choose),
                        key("away-read", "away.read", model::read)),
                answer());
        content.setPadding(new Insets(2, 12, 2, 2));
        var scroll = Texts.scrolling(content);
        scroll.prefViewportHeightProperty().bind(content.heightProperty());
        getChildren().add(Texts.column(14, scroll, key("away-close", "away.close", veil::lift)));
        Dropped.on(this, dropped -> model.file().set(dropped.getPath()));
    }

    private Button key(String id, String say, Runnable action, String... styles) {
        var key = Texts.button(words.say(say), action, styles);
        key.setId(id);
        return key;
    }

    private Label sent() {
        return told(
                "away-sent",
                () -> model.sent()
                        .get()
                        .map(sent -> words.say(
                                "away.sent",
                                sent.paper().toString(),
                                String.valueOf(sent.mail().getFileName())))
                        .orElse(""));
    }

    private Label answer() {
        return told(
                "away-answer",
                () -> model.answer()
                        .get()
                        .map(answer -> answer.signed()
                                .map(signed -> words.say(
                                        "away.signed",
                                        answer.name(),
                                        signed.taken().title(),
                                        signed.seal().brief()))
                                .orElseGet(() -> words.say("away.none", answer.name())))
                        .orElse(""));
    }

    private Label told(String id, Callable<String> text) {
        var label = Texts.words("", "lagoon");
        label.setId(id);
        label.textProperty().bind(Bindings.createStringBinding(text, model.sent(), model.answer()));
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        label.visibleProperty().bind(label.managedProperty());
        return label;
    }

    private void choose() {
        Choosing.at(this, Choosing.Wanted.file(words.say("away.choose"), "PDF", "*.pdf", "*.PDF"))
                .ifPresent(chosen -> model.file().set(chosen.getPath()));
    }
}
