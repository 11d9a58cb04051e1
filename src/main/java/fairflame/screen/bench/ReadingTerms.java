package fairflame.screen.bench;

import fairflame.diagnosis.Check;
import fairflame.diagnosis.Circumstance;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Slip;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
import java.util.ArrayList;
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
                        conditions(check),
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

    /** Circumstances that matter to this check, and a key for all others. */
    private Chips conditions(Check check) {
        var chips = new Chips();
        var chosen = ReadingCard.set(model.draft(), entry + ".conditions");
        var matter = model.work().knowledge().circumstances(check.id());
        var others = new ArrayList<Circumstance>();
        for (var circumstance : model.work().knowledge().circumstances()) {
            if (matter.contains(circumstance) || chosen.contains(circumstance.id())) {
                condition(chips, circumstance);
            } else {
                others.add(circumstance);
            }
        }
        chips.any(
                "condition-told",
                words.say("reading.told"),
                model.draft().get(entry + ".told").equals("yes"),
                on -> model.history().change(draft -> draft.with(entry + ".told", on ? "yes" : "")));
        var more = Texts.button(words.say("reading.other-conditions"), () -> {});
        more.setId("condition-more");
        more.setOnAction(event -> {
            chips.getChildren().remove(more);
            others.forEach(circumstance -> condition(chips, circumstance));
            chips.getChildren().get(chips.getChildren().size() - others.size()).requestFocus();
        });
        chips.getChildren().add(more);
        return chips;
    }

    private void condition(Chips chips, Circumstance circumstance) {
        chips.any(
                "condition-" + circumstance.id(),
                words.sayOr("condition." + circumstance.id(), circumstance.words()),
                ReadingCard.set(model.draft(), entry + ".conditions").contains(circumstance.id()),
                on -> model.history()
                        .change(draft -> draft.with(
                                entry + ".conditions",
                                Chips.toggled(ReadingCard.set(draft, entry + ".conditions"), circumstance.id(), on))));
    }
}
