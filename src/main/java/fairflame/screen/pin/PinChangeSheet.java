package fairflame.screen.pin;

import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.beans.property.StringProperty;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.StackPane;

/** Asks for the old digits and, twice, for the new ones. */
public final class PinChangeSheet extends StackPane {
    /** Widest that the sheet gets, pixels. */
    public static final double WIDEST = 460;

    /** The sheet; {@code through} is run once the digits are set, {@code back} to leave them. */
    public PinChangeSheet(PinModel model, Words words, Runnable through, Runnable back) {
        getStyleClass().add("sheet");
        setPadding(new Insets(24));
        var state = model.work().state();
        var content = Texts.column(
                12,
                Texts.words(words.say("pin.own", model.work().person()), "large", "strong"),
                Texts.words(words.say("pin.what")));
        if (state == PinWork.State.DEMO) {
            content.getChildren().add(Texts.words(words.say("pin.demo"), "slate"));
        }
        if (model.asksOld()) {
            content.getChildren().add(field("pin-old", words.say("pin.old"), model.old()));
        }
        var refusal = Texts.words("", "refusal");
        refusal.setId("pin-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        var set = Texts.button(words.say("pin.set"), model::set, "act");
        set.setId("pin-set");
        set.setMaxWidth(Double.MAX_VALUE);
        var stay = Texts.button(words.say("pin.leave"), back);
        stay.setId("pin-leave");
        stay.setMaxWidth(Double.MAX_VALUE);
        content.getChildren()
                .addAll(
                        field("pin-fresh", words.say("pin.fresh"), model.fresh()),
                        field("pin-again", words.say("pin.again"), model.again()),
                        refusal,
                        set,
                        stay);
        content.setPadding(new Insets(2, 12, 2, 2));
        var scroll = Texts.scrolling(content);
        scroll.prefViewportHeightProperty().bind(content.heightProperty());
        getChildren().add(scroll);
        model.done().addListener((property, before, now) -> through.run());
    }

    private static Node field(String id, String title, StringProperty value) {
        var field = new PasswordField();
        field.setId(id);
        field.setAccessibleText(title);
        field.textProperty().bindBidirectional(value);
        var label = Texts.words(title, "small", "slate");
        label.setLabelFor(field);
        return Texts.column(2, label, field);
    }
}
