package fairflame.screen.bench;

import fairflame.diagnosis.Answer;
import fairflame.diagnosis.Check;
import fairflame.diagnosis.ReadingVerdict;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Instrument;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.NumberPad;
import fairflame.screen.kit.Pieces;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One reading: the pad, the unit, the picture of it against its band, and what it is worth, at once. */
final class ReadingCard extends VBox {
    private static final double SIDE_EMS = 10;

    private final BenchModel model;
    private final Words words;
    private final Check check;
    private final int number;
    private final String field;
    private final Ties ties;
    private final double em;

    /** How a reading is entered: the size of the type and where Enter leads. */
    record Entering(double em, Runnable onward) {}

    ReadingCard(BenchModel model, Words words, Check check, int number, Ties ties, Entering entering) {
        super(10);
        this.em = entering.em();
        var onward = entering.onward();
        this.model = model;
        this.words = words;
        this.check = check;
        this.number = number;
        this.field = "reading." + number + ".value";
        this.ties = ties;
        getChildren().add(Texts.words(check.title(), "large", "strong"));
        if (model.readings(check.id()).size() > 1) {
            getChildren().add(SeveralReadings.of(model, words, check, number));
        }
        if (check.answer() instanceof Answer.Figure answer) {
            getChildren().add(numberEntry(answer, onward));
        } else if (check.answer() instanceof Answer.Words answer) {
            getChildren().addAll(wordEntry(answer), verdict());
        }
        var effort = words.say(
                "reading.effort",
                check.effort().minutes(),
                words.say("hazard." + check.effort().hazard().name()));
        // Below the keys, so that on a small pane all digits are in reach without scrolling.
        getChildren().add(Texts.words(check.how() + " " + effort + ".", "small"));
        getChildren().add(new ReadingTerms(model, words, check, number, ties));
        if (!check.misleads().isEmpty()) {
            getChildren().add(Texts.words(check.misleads(), "small", "open"));
        }
    }

    private HBox numberEntry(Answer.Figure answer, Runnable onward) {
        var typed = new TextField();
        typed.setId("typed");
        typed.getStyleClass().add("typed");
        typed.textProperty().bindBidirectional(model.typed(field));
        typed.setAccessibleText(check.title());
        typed.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                onward.run();
            }
        });
        typed.setMinWidth(0);
        var units = ReadingDefaults.units(answer);
        var pad = new NumberPad(
                model.typed(field),
                model.typed(field + ".unit"),
                units.stream().map(unit -> unit.spelling()).toList(),
                units.stream().map(unit -> unit.symbol()).toList(),
                words);
        var gauge = new StackPane();
        gauge.setAlignment(Pos.TOP_CENTER);
        gauge.setId("live-gauge");
        var pictures = new Pieces(gauge.getChildren());
        ties.on(model.judged(), judged -> pictures.show(gauge()));
        var side = new VBox(Texts.GAP, gauge, verdict());
        side.setMinWidth(SIDE_EMS * em);
        side.setPrefWidth(SIDE_EMS * em);
        side.setMaxWidth(SIDE_EMS * em);
        var entry = Texts.column(Texts.GAP, typed, pad);
        HBox.setHgrow(entry, Priority.ALWAYS);
        entry.setMinWidth(0);
        var both = new HBox(12, entry, side);
        both.setFillHeight(true);
        javafx.application.Platform.runLater(typed::requestFocus);
        return both;
    }

    private List<Pieces.Piece> gauge() {
        return model
                .verdict(number)
                .flatMap(verdict -> LiveGauge.of(
                        verdict, model.judged().get().map(Judged::gauges).orElseThrow()))
                .map(gauge -> new Pieces.Piece(gauge, () -> new Instrument(gauge)))
                .stream()
                .toList();
    }

    private Chips wordEntry(Answer.Words answer) {
        var chips = new Chips();
        for (var word : answer.words()) {
            chips.one(
                    "word-" + word,
                    words.sayOr("word." + word, word.replace('-', ' ')),
                    word.equals(model.draft().get(field)),
                    () -> model.history().change(draft -> draft.with(field, word)));
        }
        return chips;
    }

    private VBox verdict() {
        var box = new VBox(6);
        box.setId("verdict");
        box.setPadding(new Insets(10, 12, 10, 12));
        var lines = new Pieces(box.getChildren());
        ties.on(model.judged(), judged -> {
            var style = "band-" + tone().key();
            if (!box.getStyleClass().contains(style)) {
                box.getStyleClass().removeIf(each -> each.startsWith("band-"));
                box.getStyleClass().add(style);
            }
            lines.show(told());
        });
        return box;
    }

    private Tone tone() {
        return model.refused().containsKey(field)
                ? Tone.OUTSIDE
                : model.verdict(number).map(StepList::tone).orElse(Tone.OPEN);
    }

    /** What the reading is worth, in words; or what is allowed, right beside where it was typed. */
    private List<Pieces.Piece> told() {
        var allowed = model.refused().get(field);
        if (allowed != null) {
            var text = words.say("reading.allowed", allowed);
            return List.of(new Pieces.Piece(text, () -> Texts.words(text, "refusal")));
        }
        var found = model.verdict(number);
        var tone = tone();
        var word = found.map(this::word).orElse(words.say("reading.none"));
        var all = new ArrayList<Pieces.Piece>();
        all.add(new Pieces.Piece(
                List.of(tone, word), () -> Texts.across(8, new Mark(tone), Texts.words(word, "strong"))));
        found.map(ReadingVerdict::words)
                .ifPresent(lines -> lines.forEach(line -> all.add(new Pieces.Piece(line, () -> Texts.words(line)))));
        return all;
    }

    private String word(ReadingVerdict verdict) {
        return words.say("reading.verdict." + verdict.verdict().name());
    }

    static Set<String> set(Draft draft, String field) {
        return Set.copyOf(VisitText.words(draft.get(field)));
    }
}
