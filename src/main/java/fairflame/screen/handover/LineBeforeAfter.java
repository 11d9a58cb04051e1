package fairflame.screen.handover;

import fairflame.screen.kit.Columns;
import fairflame.screen.kit.Mark;
import fairflame.screen.kit.Texts;
import fairflame.screen.kit.Tone;
import fairflame.screen.look.Words;
import fairflame.visit.LineStory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The gas line today and after the work, side by side: each pipe as thick as it is, and what reaches the heater. */
final class LineBeforeAfter extends VBox {
    private static final double LEAST = 330;
    /** Thickness of a pipe on the screen for an inch of its inside width. */
    private static final double PIXELS_PER_INCH = 17;

    private static final double THINNEST = 4;
    private static final double THICKEST = 44;

    private final Words words;

    LineBeforeAfter(LineStory story, Words words) {
        super(12);
        this.words = words;
        setId("line-story");
        getChildren()
                .addAll(
                        Texts.words(words.say("handover.line"), "heading"),
                        new Columns(
                                LEAST,
                                24,
                                List.of(
                                        way(words.say("handover.line-today"), story.today()),
                                        way(words.say("handover.line-after"), story.after()))));
        if (story.others() > 0) {
            getChildren().add(Texts.words(words.say("handover.line-others", story.others()), "slate"));
        }
    }

    private VBox way(String title, LineStory.Way way) {
        var box = Texts.column(8, Texts.words(title, "large", "strong"), end(words.say("handover.line-meter")));
        way.runs().forEach(run -> box.getChildren().add(run(run)));
        var tone = way.enough() ? Tone.GOOD : Tone.OUTSIDE;
        var reached = Texts.column(
                4,
                Texts.words(words.say("handover.line-heater"), "semi"),
                Texts.words(
                        words.say(
                                "handover.line-reaches",
                                words.number(way.reaches().inchesBeside(way.needs())),
                                words.number(way.needs().inchesBeside(way.needs()))),
                        "figure"),
                Texts.across(
                        8,
                        new Mark(tone),
                        Texts.words(
                                words.say(way.enough() ? "handover.line-enough" : "handover.line-short"),
                                "strong",
                                way.enough() ? "moss" : "oxide")));
        reached.getStyleClass().add("line-end");
        box.getChildren().add(reached);
        box.getStyleClass().add("card");
        box.setPadding(new Insets(16));
        return box;
    }

    private VBox end(String text) {
        var box = Texts.column(0, Texts.words(text, "semi"));
        box.getStyleClass().add("line-end");
        return box;
    }

    /** A pipe stands upright between the meter and the heater, its words beside it. */
    private HBox run(LineStory.Run run) {
        var pipe = new Region();
        pipe.getStyleClass().add(run.fresh() ? "line-pipe-fresh" : "line-pipe");
        var inches = run.bore().map(bore -> bore.feet() * 12).orElse(0.75);
        var thick = Math.min(THICKEST, Math.max(THINNEST, inches * PIXELS_PER_INCH));
        pipe.setMinWidth(thick);
        pipe.setMaxWidth(thick);
        var slot = new HBox(pipe);
        slot.setAlignment(Pos.CENTER);
        slot.setMinWidth(THICKEST + 8);
        slot.setFillHeight(true);
        var told = Texts.column(
                0,
                Texts.words(words.say("handover.line-pipe", run.size()), "semi"),
                Texts.words(
                        words.say(
                                "handover.line-length",
                                feet(run.length().feet()),
                                words.sayOr("line-material." + run.material(), run.material())),
                        "slate"));
        if (run.fresh()) {
            told.getChildren().add(Texts.words(words.say("handover.line-new"), "strong", "lagoon"));
        }
        told.setAlignment(Pos.CENTER_LEFT);
        told.setPadding(new Insets(10, 0, 10, 0));
        told.setMinWidth(0);
        HBox.setHgrow(told, Priority.ALWAYS);
        return new HBox(12, slot, told);
    }

    private String feet(double feet) {
        return words.number(BigDecimal.valueOf(feet).setScale(0, RoundingMode.HALF_UP));
    }
}
