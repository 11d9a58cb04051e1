package fairflame.screen.bench;

import fairflame.diagnosis.ReadingVerdict;
import fairflame.quantity.Unit;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Pieces;
import fairflame.screen.kit.Press;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.Arrays;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The evidence on the left: one row for each thing to find out, in the order it should be taken. */
final class StepList extends StackPane {
    private final BenchModel model;
    private final Words words;
    private final VBox rows = new VBox(Texts.GAP);
    private final Pieces pieces = new Pieces(rows.getChildren());

    StepList(BenchModel model, Words words, fairflame.screen.kit.Ties ties) {
        this.model = model;
        this.words = words;
        getChildren().add(Texts.scrolling(rows));
        ties.later(model.step(), step -> fill());
        // The model was tied first and has judged the new draft when this is told.
        ties.later(model.history().now(), draft -> fill());
        fill();
    }

    /** All that the look of a row depends on. */
    private record Row(String step, String title, String value, Tone tone, boolean untaken, boolean chosen) {}

    private void fill() {
        var draft = model.draft();
        var all = new ArrayList<Row>();
        all.add(row(Steps.WHO, words.say("step.who"), draft.get("customer.name"), Tone.OPEN));
        all.add(row(Steps.COMPLAINT, words.say("step.complaint"), complaint(draft), Tone.OPEN));
        all.add(row(Steps.PLATE, words.say("step.plate"), draft.get("heater.description"), Tone.OPEN));
        all.add(row(Steps.GATES, words.say("step.gates"), gates(draft), gatesTone()));
        var next = model.judged().get().flatMap(found -> found.next().stream().findFirst());
        for (var id : model.checks()) {
            all.add(check(id, next.filter(check -> check.check().equals(id)).isPresent()));
        }
        all.add(row(Steps.MORE, words.say("step.more"), "", Tone.OPEN));
        all.add(row(Steps.PHOTOS, words.say("step.photos"), photos(draft), Tone.OPEN));
        all.add(row(Steps.LEADS, words.say("step.leads"), leads(), leadsTone()));
        all.add(row(Steps.TERMS, words.say("step.terms"), draft.get("repair.fitter.name"), Tone.OPEN));
        all.add(row(Steps.DECIDE, words.say("step.decide"), decided(draft), Tone.OPEN));
        all.add(row(Steps.PRICE, words.say("step.price"), "", Tone.OPEN));
        pieces.show(
                all.stream().map(row -> new Pieces.Piece(row, () -> drawn(row))).toList());
    }

    private String decided(Draft draft) {
        var told = java.util.stream.Stream.concat(Terms.WARM_UP.stream(), Terms.NEW_HEATER.stream())
                .filter(draft::has)
                .count();
        return told == 0 ? "" : words.say("decide.count", told);
    }

    private String complaint(Draft draft) {
        return draft.has("complaint")
                ? words.sayOr(
                        "complaint." + draft.get("complaint"),
                        model.work()
                                .knowledge()
                                .complaint(draft.get("complaint"))
                                .plain())
                : "";
    }

    private String gates(Draft draft) {
        var asked = model.work().knowledge().gates().stream()
                .filter(gate -> gate.asked())
                .toList();
        var answered =
                asked.stream().filter(gate -> draft.has("gate." + gate.id())).count();
        return words.say("gates.count", answered, asked.size());
    }

    private Tone gatesTone() {
        if (model.judged().get().filter(Judged::danger).isPresent()) {
            return Tone.OUTSIDE;
        }
        var open = model.work().knowledge().gates().stream()
                .anyMatch(gate -> gate.asked() && !model.draft().has("gate." + gate.id()));
        return open ? Tone.OPEN : Tone.GOOD;
    }

    private String photos(Draft draft) {
        var count = model.work().photos().of(draft.get("id")).size();
        return count == 0 ? "" : words.say("photo.count", count);
    }

    private String leads() {
        return words.say("leads.count", model.leadsPlaced());
    }

    private Tone leadsTone() {
        return model.leadsPlaced() > 0 ? Tone.OUTSIDE : Tone.GOOD;
    }

    private Row check(String id, boolean next) {
        var check = model.work().knowledge().check(id);
        var number = model.lastReading(id).filter(found -> model.draft().has("reading." + found + ".value"));
        var value =
                number.map(found -> shown("reading." + found + ".value")).orElse(next ? words.say("step.next") : "");
        var tone = number.flatMap(model::verdict).map(StepList::tone).orElse(Tone.OPEN);
        return row(Steps.ofCheck(id), check.title(), value, tone);
    }

    private String shown(String field) {
        var unit = model.draft().get(field + ".unit");
        var value = model.draft().get(field);
        if (unit.isEmpty() || !value.matches("[+-]?[\\d.,]+")) {
            return words.sayOr("word." + value.replace(' ', '-'), value.replace('-', ' '));
        }
        return value + " " + symbol(unit);
    }

    private static String symbol(String spelling) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.spelling().equals(spelling))
                .findFirst()
                .map(Unit::symbol)
                .orElse(spelling);
    }

    static Tone tone(ReadingVerdict verdict) {
        return switch (verdict.verdict()) {
            case GOOD -> Tone.GOOD;
            case EDGE, DOUBTED -> Tone.EDGE;
            case OUTSIDE -> Tone.OUTSIDE;
            case INFORMATION -> Tone.OPEN;
        };
    }

    private Row row(String step, String title, String value, Tone tone) {
        var untaken = value.isEmpty()
                || (tone == Tone.OPEN
                        && step.startsWith("check:")
                        && model.lastReading(Steps.check(step)).isEmpty());
        return new Row(
                step, title, value, tone, untaken, step.equals(model.step().get()));
    }

    private Press drawn(Row row) {
        var name = Texts.column(0, Texts.words(row.title(), "semi"));
        if (!row.value().isEmpty()) {
            name.getChildren().add(Texts.words(row.value(), "small", "slate"));
        }
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMinWidth(0);
        name.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        var press = new Press(
                row.title() + ", " + row.value() + ", "
                        + words.say("verdict." + row.tone().key()),
                () -> model.step().set(row.step()),
                name);
        if (row.tone() != Tone.OPEN) {
            press.getChildren().add(new Mark(row.tone()));
        }
        press.setId("step-" + row.step().replace(':', '-'));
        press.styled("row");
        if (row.untaken()) {
            press.styled("untaken");
        }
        if (row.chosen()) {
            press.styled("chosen");
        }
        return press;
    }
}
