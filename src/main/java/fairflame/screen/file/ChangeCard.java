package fairflame.screen.file;

import fairflame.agreement.AddedLine;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Fold;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** Change orders: those signed, and a new one written, shown with its new total and signed on the screen. */
final class ChangeCard extends Card {
    private final ChangeModel model;
    private final VBox lines = new VBox(Texts.GAP);
    private final VBox shown = new VBox(12);

    ChangeCard(FileModel file, Words words) {
        super(words, words.say("file.change"));
        this.model = new ChangeModel(file);
        file.job().agreed().orders().forEach(order -> {
            add(Texts.words(
                    words.say(
                            "file.change-signed",
                            order.number(),
                            order.signature().name(),
                            words.moment(order.signature().at())),
                    "semi"));
            add(pair(order.reason(), words.money(order.after().total())));
        });
        add(Texts.words(words.say("file.change-new"), "semi"));
        add(slip(model.form(), "change-reason"));
        add(lines);
        fill(model.added().get());
        model.added().addListener((property, before, now) -> fill(now));
        add(new Fold("change-line", words.say("file.change-line"), this::line));
        add(new Fold("change-remove", words.say("file.change-remove"), this::removals));
        add(keys(toggle("change-gas", words.say("file.change-gas"), model.gas())));
        add(whole(model.form()), keys(key("change-show", model::show, "act")), shown);
        model.draft().addListener((property, before, now) -> {
            shown.getChildren().clear();
            now.ifPresent(draft -> shown.getChildren().add(new ChangeSigning(model, draft, words)));
        });
    }

    private void fill(List<AddedLine> added) {
        lines.getChildren().clear();
        for (int i = 0; i < added.size(); i++) {
            var place = i;
            var line = added.get(place);
            lines.getChildren()
                    .addAll(
                            pair(
                                    words.say(
                                            "file.change-added",
                                            line.description(),
                                            words.number(line.quantity()),
                                            words.sayOr("unit." + line.unit(), line.unit())),
                                    words.amount(line.unitPrice())),
                            keys(key("change-drop-" + place, words.say("file.change-drop"), () -> model.drop(place))));
        }
    }

    private Node line() {
        return Texts.column(
                Texts.GAP,
                slip(model.form(), "change-words"),
                one("change-kind", "kind.", WorkCard.kinds(), model.kind()),
                new Columns(
                        LEAST,
                        12,
                        List.of(
                                slip(model.form(), "change-quantity"),
                                slip(model.form(), "change-unit"),
                                slip(model.form(), "change-price"),
                                slip(model.form(), "change-item"))),
                keys(key("change-add", model::add)));
    }

    private Node removals() {
        var box = Texts.column(Texts.GAP);
        for (var line : model.lines()) {
            var out = new SimpleBooleanProperty(model.removed(line.id()));
            out.addListener((property, before, now) -> model.remove(line.id(), now));
            box.getChildren()
                    .addAll(
                            pair(line.description(), words.amount(line.net())),
                            keys(toggle("change-out-" + line.id(), words.say("file.change-out"), out)));
        }
        return box;
    }
}
