package fairflame.screen.office;

import fairflame.screen.kit.Choosing;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.scene.layout.VBox;

/** Packets: taken in from a truck, made on a truck, and what disagreed, both sides kept. */
final class PacketsPage extends VBox {
    private static final double LEAST = 430;

    private final PacketsModel model;
    private final Words words;
    private final VBox conflicts = new VBox(12);

    PacketsPage(PacketsModel model, Words words, Ties ties) {
        super(12);
        this.model = model;
        this.words = words;
        getChildren()
                .addAll(
                        Cards.head(words.say("office.packets"), words.say("packet.note")),
                        new Columns(LEAST, 12, List.of(taking(), making())),
                        conflicts);
        ties.on(model.changes(), count -> fill());
    }

    private VBox taking() {
        var take = Texts.button(words.say("packet.take"), model::take, "act");
        take.setId("packet-take");
        var file = new FileSlip("packet-file", words.say("packet.file"), model.file(), Choosing.Kind.OPEN, words);
        return Cards.card(
                words.say("packet.taking"),
                Texts.words(words.say("packet.take-note"), "slate"),
                file,
                Cards.keys(file.key(), take),
                Cards.said(
                        "packet-said",
                        model.taken()
                                .map(taken -> taken.map(done -> words.say(
                                                "packet.did",
                                                done.origin(),
                                                done.added(),
                                                done.renewed(),
                                                done.same(),
                                                done.conflicts()))
                                        .orElse(""))));
    }

    private VBox making() {
        var name = Texts.button(words.say("packet.name"), model::name);
        name.setId("packet-name");
        var export = Texts.button(words.say("packet.export"), model::export);
        export.setId("packet-export");
        return Cards.card(
                words.say("packet.making"),
                Cards.said(
                        "packet-named",
                        model.named()
                                .map(named ->
                                        words.say(named.isEmpty() ? "packet.no-name" : "packet.is-named", named))),
                new Columns(
                        150,
                        12,
                        List.of(
                                new Slip(
                                        "packet-laptop",
                                        words.say("packet.laptop"),
                                        model.laptop().value(),
                                        model.laptop().refusal()),
                                new Slip(
                                        "packet-series",
                                        words.say("packet.series"),
                                        model.series().value(),
                                        model.series().refusal()))),
                Cards.keys(name, export),
                Cards.said(
                        "packet-written",
                        model.written().map(place -> place.isEmpty() ? "" : words.say("copied.to", place))));
    }

    private void fill() {
        conflicts.getChildren().clear();
        if (!model.conflicts().isEmpty()) {
            conflicts
                    .getChildren()
                    .addAll(
                            Texts.words(words.say("packet.conflicts"), "heading"),
                            Texts.words(words.say("packet.conflicts-note"), "slate"));
            model.conflicts()
                    .forEach(conflict -> conflicts.getChildren().add(new ConflictCard(model, conflict, words)));
        }
    }
}
