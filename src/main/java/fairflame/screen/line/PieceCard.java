package fairflame.screen.line;

import fairflame.gas.Material;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.look.Words;
import java.util.List;
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
                        measured("pressure", words.say("line.source-pressure")),
                        measured("firing", words.say("line.source-firing")),
                        measured("capacity", words.say("line.source-capacity")),
                        Texts.words(words.say("line.whole"), "small", "slate"),
                        measured("drop.low", words.say("line.drop")),
                        new Columns(
                                LEAST,
                                12,
                                List.of(
                                        slip("gas.heatingValue", words.say("line.heating-value")),
                                        slip("gas.specificGravity", words.say("line.gravity")))));
    }

    private void appliance() {
        getChildren()
                .addAll(
                        Texts.words(id.replace('-', ' '), "large", "strong"),
                        measured("input", words.say("line.appliance-input")),
                        measured("minimum", words.say("line.appliance-minimum")),
                        measured("maximum", words.say("line.appliance-maximum")),
                        away());
    }

    private javafx.scene.control.Button away() {
        var away = Texts.button(words.say("line.away"), () -> model.remove(id));
        away.setId("piece-away");
        return away;
    }

    /** A number with a key for each unit that it may be read in. */
    private VBox measured(String field, String title) {
        var units = new Chips();
        LineUnits.of(field)
                .forEach(unit -> units.one(
                        "unit-" + field + "-" + unit.spelling().replaceAll("[^a-z0-9]", "-"),
                        unit.symbol(),
                        unit.spelling().equals(model.unit(id, field)),
                        () -> model.unit(id, field, unit.spelling())));
        return Texts.column(Texts.GAP, slip(field, title), units);
    }

    private Slip slip(String field, String title) {
        return new Slip("piece-" + field, title, model.typed(id, field), model.allowed(id, field));
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
        var keys = new FlowPane(Texts.GAP, Texts.GAP, branch, split, away());
        keys.setMinWidth(0);
        getChildren()
                .addAll(
                        Texts.words(words.say("line.one-run"), "large", "strong"),
                        measured("length", words.say("line.length")),
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
