package fairflame.screen.handover;

import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A copy at once: into a folder, to a printer, as an e-mail draft. */
final class CopyKeys extends VBox {
    private final CopyModel model;
    private final Words words;

    CopyKeys(CopyModel model, Words words) {
        super(12);
        this.model = model;
        this.words = words;
        var place = Texts.words("", "slate");
        place.setId("copy-place");
        place.textProperty()
                .bind(javafx.beans.binding.Bindings.createStringBinding(
                        () -> words.say("handover.folder", model.folder().get()), model.folder()));
        var said = Texts.words("", "lagoon");
        said.setId("copy-said");
        said.textProperty().bind(model.said());
        var refusal = Texts.words("", "refusal");
        refusal.setId("copy-refusal");
        refusal.textProperty().bind(model.refusal());
        refusal.managedProperty().bind(model.refusal().isNotEmpty());
        getChildren()
                .addAll(
                        Texts.words(words.say("handover.copy"), "strong"),
                        new FlowPane(
                                Texts.GAP,
                                Texts.GAP,
                                key("copy-folder", "handover.copy-folder", model::paper),
                                key("copy-choose", "handover.copy-choose", this::choose),
                                key("copy-print", "handover.copy-print", model::print),
                                key("copy-mail", "handover.copy-mail", model::mail)),
                        place,
                        said,
                        refusal);
    }

    private Button key(String id, String say, Runnable action) {
        var key = Texts.button(words.say(say), action);
        key.setId(id);
        return key;
    }

    private void choose() {
        var wanted = Choosing.Wanted.any(
                Choosing.Kind.FOLDER,
                words.say("handover.copy-choose"),
                model.folder().get());
        Choosing.at(this, wanted).ifPresent(chosen -> {
            model.folder().set(chosen.getPath());
            model.paper();
        });
    }
}
