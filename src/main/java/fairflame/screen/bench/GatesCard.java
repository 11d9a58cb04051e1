package fairflame.screen.bench;

import fairflame.diagnosis.Gate;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Veil;
import fairflame.screen.look.Words;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The danger questions. Each needs its own answer: "not asked" is not "no". */
final class GatesCard extends VBox {
    private static final double SURE = 480;

    GatesCard(BenchModel model, Words words, Veil veil, Ties ties) {
        super(12);
        getChildren()
                .addAll(
                        Texts.words(words.say("step.gates"), "large", "strong"),
                        Texts.words(words.say("gates.note"), "small", "slate"));
        for (var gate : model.work().knowledge().gates()) {
            if (gate.asked()) {
                getChildren().add(question(model, words, gate, new Asking(veil, ties)));
            }
        }
    }

    private record Asking(Veil veil, Ties ties) {}

    private static HBox question(BenchModel model, Words words, Gate gate, Asking asking) {
        var text = Texts.words(words.sayOr("gate." + gate.id(), gate.question()));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        text.setMinWidth(0);
        var group = new ToggleGroup();
        var yes = answer(model, words, gate, "yes", group);
        var no = answer(model, words, gate, "no", group);
        yes.setOnAction(event -> {
            yes.setSelected(false);
            asking.veil().lay(sure(model, words, gate, asking.veil()), SURE);
        });
        asking.ties().on(model.history().now(), draft -> {
            yes.setSelected(draft.get("gate." + gate.id()).equals("yes"));
            no.setSelected(draft.get("gate." + gate.id()).equals("no"));
        });
        var row = Texts.across(Texts.GAP, text, yes, no);
        row.getStyleClass().add("card");
        row.setPadding(new javafx.geometry.Insets(8, 8, 8, 12));
        return row;
    }

    /** A slip of the finger must not stop the work, and stopped work cannot be taken back: it is asked twice. */
    private static VBox sure(BenchModel model, Words words, Gate gate, Veil veil) {
        var stop = Texts.button(
                words.say("gates.stop"),
                () -> {
                    veil.lift();
                    model.history().change(draft -> draft.with("gate." + gate.id(), "yes"));
                },
                "danger");
        stop.setId("gate-stop");
        var slip = Texts.button(words.say("gates.slip"), veil::lift);
        slip.setId("gate-slip");
        var box = Texts.column(
                16,
                Texts.words(words.sayOr("gate." + gate.id(), gate.question()), "large", "strong"),
                Texts.words(words.say("gates.sure")),
                stop,
                slip);
        box.getStyleClass().add("sheet");
        box.setPadding(new javafx.geometry.Insets(24));
        stop.setMaxWidth(Double.MAX_VALUE);
        slip.setMaxWidth(Double.MAX_VALUE);
        return box;
    }

    private static ToggleButton answer(BenchModel model, Words words, Gate gate, String answer, ToggleGroup group) {
        var key = new ToggleButton(words.say("answer." + answer));
        key.setId("gate-" + gate.id() + "-" + answer);
        key.getStyleClass().add(answer);
        key.setToggleGroup(group);
        key.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
        key.setAccessibleText(gate.question() + " " + words.say("answer." + answer));
        key.setOnAction(event ->
                model.history().change(draft -> draft.with("gate." + gate.id(), key.isSelected() ? answer : "")));
        return key;
    }
}
