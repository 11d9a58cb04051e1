package fairflame.screen.handover;

import fairflame.screen.kit.Chips;
import fairflame.screen.kit.SignaturePad;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.geometry.Insets;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is agreed to stands right above the line on which it is signed. */
final class Agreeing extends VBox {
    private final HandoverModel model;
    private final Words words;

    Agreeing(HandoverModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        var promises = new VBox(Texts.GAP);
        ties.on(
                model.choice(),
                choice -> promises.getChildren()
                        .setAll(model.promises().stream().map(this::promise).toList()));
        var roles = new Chips();
        for (var role : List.of("owner", "tenant", "agent")) {
            roles.one(
                    "sign-role-" + role,
                    words.say("role." + role),
                    role.equals(model.role().get()),
                    () -> model.role().set(role));
        }
        var pad = new SignaturePad(words.say("handover.pad"));
        pad.setId("signature-pad");
        ties.later(pad.signed(), drawn -> model.drawn().set(drawn));
        var byName = new ToggleButton(words.say("handover.by-name"));
        byName.setId("sign-by-name");
        byName.getStyleClass().add("no");
        byName.setSelected(model.byName().get());
        byName.setOnAction(event -> {
            pad.clear();
            model.drawn().set(false);
            model.byName().set(byName.isSelected());
        });
        pad.disableProperty().bind(model.byName());
        var refusal = Texts.words("", "refusal");
        refusal.setId("sign-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        var missing = Texts.words("", "slate");
        missing.setId("sign-missing");
        getChildren()
                .addAll(
                        Texts.words(words.say("handover.agree"), "heading"),
                        promises,
                        new Slip("signer", words.say("handover.name"), model.name(), new SimpleStringProperty("")),
                        roles,
                        Texts.words(words.say("handover.pad"), "small", "slate"),
                        pad,
                        byName,
                        missing,
                        refusal,
                        keys(pad, missing, ties));
    }

    private HBox promise(HandoverWork.Promise promise) {
        var text = Texts.words(promise.words());
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        text.setMinWidth(0);
        var yes = new ToggleButton(
                words.say(promise.declined().isEmpty() ? "handover.agreed" : "handover.declined-seen"));
        yes.setId("promise-" + promise.id());
        yes.getStyleClass().add("no");
        yes.setMinWidth(USE_PREF_SIZE);
        yes.setSelected(model.accepted().contains(promise.id()));
        yes.setOnAction(event -> {
            if (yes.isSelected()) {
                model.accepted().add(promise.id());
            } else {
                model.accepted().remove(promise.id());
            }
        });
        var row = Texts.across(16, text, yes);
        row.getStyleClass().add("card");
        row.setPadding(new Insets(10, 10, 10, 14));
        return row;
    }

    private HBox keys(SignaturePad pad, javafx.scene.control.Label missing, Ties ties) {
        var clear = Texts.button(words.say("handover.clear"), () -> {
            pad.clear();
            model.drawn().set(false);
        });
        clear.setId("sign-clear");
        var sign = Texts.button(words.say("handover.sign"), () -> model.sign(pad.strokes()), "act");
        sign.setId("sign");
        sign.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(sign, Priority.ALWAYS);
        ties.on(model.missing(), key -> {
            missing.setText(key.isEmpty() ? words.say("handover.ready") : words.say(key));
            sign.setDisable(!key.isEmpty());
        });
        return new HBox(Texts.GAP, clear, sign);
    }
}
