package fairflame.screen.bench;

import fairflame.diagnosis.Check;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import javafx.beans.property.SimpleStringProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** With what and when a reading was taken: both decide what it is worth. */
final class ReadingTerms extends VBox {
    private final BenchModel model;
    private final Words words;
    private final String entry;

    ReadingTerms(BenchModel model, Words words, Check check, int number, Ties ties) {
        super(Texts.GAP);
        this.model = model;
        this.words = words;
        this.entry = "reading." + number;
        if (!check.instruments().isEmpty()) {
            getChildren()
                    .addAll(
                            Texts.words(words.say("reading.instrument"), "small", "slate"),
                            instruments(check),
                            warning(ties));
        }
        getChildren()
                .addAll(
                        Texts.words(words.say("reading.conditions"), "small", "slate"),
                        conditions(),
                        new Slip(
                                entry + ".note",
                                words.say("reading.note"),
                                model.typed(entry + ".note"),
                                new SimpleStringProperty("")));
    }

    private Chips instruments(Check check) {
        var chips = new Chips();
        for (var id : check.instruments()) {
            var instrument = model.work().knowledge().instrument(id);
            chips.one(
                    "instrument-" + id,
                    words.sayOr("instrument." + id, instrument.name()),
                    id.equals(model.draft().get(entry + ".instrument")),
                    () -> model.history().change(draft -> draft.with(entry + ".instrument", id)));
        }
        return chips;
    }

    /** How the chosen instrument can fool its user. */
    private Label warning(Ties ties) {
        var warning = Texts.words("", "small", "open");
        warning.setId("instrument-warning");
        ties.on(model.history().now(), draft -> {
            var id = draft.get(entry + ".instrument");
            var text = id.isEmpty()
                    ? ""
                    : words.sayOr(
                            "instrument-warning." + id,
                            model.work().knowledge().instrument(id).misleads());
            warning.setText(text);
            warning.setManaged(!text.isEmpty());
        });
        return warning;
    }

    private Chips conditions() {
        var chips = new Chips();
        for (var circumstance : model.work().knowledge().circumstances()) {
            chips.any(
                    "condition-" + circumstance.id(),
                    words.sayOr("condition." + circumstance.id(), circumstance.words()),
                    ReadingCard.set(model.draft(), entry + ".conditions").contains(circumstance.id()),
                    on -> model.history()
                            .change(draft -> draft.with(
                                    entry + ".conditions",
                                    Chips.toggled(
                                            ReadingCard.set(draft, entry + ".conditions"), circumstance.id(), on))));
        }
        chips.any(
                "condition-told",
                words.say("reading.told"),
                model.draft().get(entry + ".told").equals("yes"),
                on -> model.history().change(draft -> draft.with(entry + ".told", on ? "yes" : "")));
        return chips;
    }
}
