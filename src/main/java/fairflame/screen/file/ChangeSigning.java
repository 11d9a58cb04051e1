package fairflame.screen.file;

import fairflame.agreement.ChangeDraft;
import fairflame.screen.kit.SignaturePad;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** What the job would come to, what the customer agrees to, and the line on which it is signed. */
final class ChangeSigning extends Card {
    ChangeSigning(ChangeModel model, ChangeDraft draft, Words words) {
        super(words, words.say("file.change-sheet"));
        getStyleClass().add("sheet");
        add(Texts.words(draft.number(), "figure", "slate"));
        add(pair(words.say("file.change-before"), words.money(draft.before().total())));
        draft.lines().forEach(line -> add(pair(line.description(), words.amount(line.net()))));
        add(pair(words.say("file.change-tax"), words.amount(draft.after().tax())));
        var after =
                pair(words.say("file.change-after"), words.money(draft.after().total()), "strong");
        after.setId("change-after");
        add(after);
        var consent = model.consent();
        add(promise("change-authorise", consent.get(0), model.authorised()));
        add(promise("change-electronic", consent.get(1), model.electronic()));
        add(slip(model.form(), "change-name"));
        add(one("change-role", "role.", List.of("owner", "tenant", "agent"), model.role()));
        var pad = new SignaturePad(words.say("handover.pad"));
        pad.setId("change-pad");
        pad.signed().addListener((property, before, now) -> model.drawn().set(now));
        add(Texts.words(words.say("handover.pad"), "small", "slate"), pad, whole(model.form()));
        add(keys(
                key("change-sign", () -> model.sign(pad.strokes()), "act"),
                key("change-clear", words.say("handover.clear"), () -> {
                    pad.clear();
                    model.drawn().set(false);
                })));
    }

    private Node promise(String id, String text, BooleanProperty on) {
        return new VBox(Texts.GAP, Texts.words(text), keys(toggle(id, words.say("handover.agreed"), on)));
    }
}
