package fairflame.screen.line;

import fairflame.gas.Material;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What can be said of the chosen run, appliance or source. */
final class PieceCard extends VBox {
    private static final double LEAST = 120;
    private static final List<String> FITTINGS =
            List.of("ell-90", "ell-45", "tee-branch", "tee-run", "cock", "ball-valve");
    private static final List<String> PLACES = List.of("indoors", "outdoors", "buried");

    private final LineModel model;
    private final Words words;
    private final String id;

    PieceCard(LineModel model, Words words, LayoutText text, String id) {
        super(12);
        this.model = model;
        this.words = words;
        this.id = id;
        if (id.equals("source")) {
            source();
        } else if (text.isRun(id)) {
            run(text);
        } else {
            appliance();
        }
    }

    private void source() {
        getChildren()
                .addAll(
                        Texts.words(words.say("line.source"), "large", "strong"),
                        slips(List.of("pressure", "firing", "capacity"), "line.source-"));
    }

    private void appliance() {
        getChildren()
                .addAll(
                        Texts.words(id.replace('-', ' '), "large", "strong"),
                        slips(List.of("input", "minimum", "maximum"), "line.appliance-"));
    }

    private Columns slips(List<String> fields, String key) {
        return new Columns(
                LEAST,
                12,
                fields.stream()
                        .map(field -> slip(field, words.say(key + field)))
                        .toList());
    }

    private Slip slip(String field, String title) {
        return new Slip("piece-" + field, title, model.typed(id, field), new SimpleStringProperty(""));
    }

    private void run(LayoutText text) {
        var materials = new Chips();
        for (var material : Material.values()) {
            materials.one(
                    "material-" + material.word(),
                    words.sayOr("material." + material.word(), material.words()),
                    material.word().equals(text.get(id, "material")),
                    () -> model.change(before -> before.with(id, "material", material.word())
                            .with(
                                    id,
                                    "size",
                                    model.work()
                                            .tables()
                                            .offered(material)
                                            .get(0)
                                            .size())));
        }
        var sizes = new Chips();
        model.work()
                .tables()
                .offered(Material.parse(text.get(id, "material")))
                .forEach(pipe -> sizes.one(
                        "size-" + pipe.size().replace('/', '_'),
                        pipe.size(),
                        pipe.size().equals(text.get(id, "size")),
                        () -> model.change(before -> before.with(id, "size", pipe.size()))));
        var places = new Chips();
        PLACES.forEach(place -> places.one(
                "lies-" + place,
                words.say("line.place-" + place),
                place.equals(text.get(id, "place")),
                () -> model.change(before -> before.with(id, "place", place))));
        var branch = Texts.button(
                words.say("line.branch"), () -> model.change(before -> before.branched(before.get(id, "to"))));
        branch.setId("piece-branch");
        var split = Texts.button(words.say("line.split"), () -> model.change(before -> before.split(id)));
        split.setId("piece-split");
        var away = Texts.button(words.say("line.away"), () -> {
            model.change(before -> before.without(id));
            model.chosen().set("");
        });
        away.setId("piece-away");
        var keys = new FlowPane(Texts.GAP, Texts.GAP, branch, split, away);
        keys.setMinWidth(0);
        getChildren()
                .addAll(
                        Texts.words(words.say("line.one-run"), "large", "strong"),
                        slip("length", words.say("line.length")),
                        materials,
                        Texts.words(words.say("line.size"), "small", "slate"),
                        sizes,
                        Texts.words(words.say("line.lies"), "small", "slate"),
                        places,
                        Texts.words(words.say("line.fittings"), "small", "slate"),
                        new Columns(
                                LEAST,
                                12,
                                FITTINGS.stream()
                                        .map(name -> slip("fittings." + name, words.say("line." + name)))
                                        .toList()),
                        keys);
    }
}
