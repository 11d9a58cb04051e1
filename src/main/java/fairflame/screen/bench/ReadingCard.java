package fairflame.screen.bench;

import fairflame.diagnosis.Answer;
import fairflame.diagnosis.Check;
import fairflame.diagnosis.ReadingVerdict;
import fairflame.screen.kit.Chips;
import fairflame.screen.kit.Instrument;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.NumberPad;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Ties;
import fairflame.screen.look.Words;
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
        var effort = check.effort();
        getChildren()
                .addAll(
                        Texts.words(check.title(), "large", "strong"),
                        Texts.words(
                                check.how() + " "
                                        + words.say(
                                                "reading.effort",
                                                effort.minutes(),
                                                words.say("hazard."
                                                        + effort.hazard().name()))
                                        + ".",
                                "small"));
        if (check.answer() instanceof Answer.Figure answer) {
            getChildren().add(numberEntry(answer, onward));
        } else if (check.answer() instanceof Answer.Words answer) {
            getChildren().addAll(wordEntry(answer), verdict());
        }
        getChildren().add(new ReadingTerms(model, words, check, number));
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
        ties.on(model.judged(), judged -> gauge(gauge));
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

    private void gauge(StackPane side) {
        var gauge = model.verdict(number)
                .flatMap(verdict -> LiveGauge.of(
                        verdict, model.judged().get().map(Judged::gauges).orElseThrow()));
        side.getChildren().setAll(gauge.map(Instrument::new).stream().toList());
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
        ties.on(model.judged(), judged -> tell(box));
        return box;
    }

    private void tell(VBox box) {
        box.getStyleClass().removeIf(style -> style.startsWith("band-"));
        var allowed = model.refused().get(field);
        if (allowed != null) {
            box.getStyleClass().add("band-outside");
            box.getChildren().setAll(Texts.words(words.say("reading.allowed", allowed), "refusal"));
            return;
        }
        var found = model.verdict(number);
        var tone = found.map(StepList::tone).orElse(fairflame.screen.kit.Tone.OPEN);
        box.getStyleClass().add("band-" + tone.key());
        var head = Texts.across(
                8, new Mark(tone), Texts.words(found.map(this::word).orElse(words.say("reading.none")), "strong"));
        box.getChildren().setAll(head);
        found.map(ReadingVerdict::words)
                .ifPresent(lines -> lines.forEach(line -> box.getChildren().add(Texts.words(line))));
    }

    private String word(ReadingVerdict verdict) {
        return words.say("reading.verdict." + verdict.verdict().name());
    }

    static Set<String> set(Draft draft, String field) {
        return Set.copyOf(VisitText.words(draft.get(field)));
    }
}
