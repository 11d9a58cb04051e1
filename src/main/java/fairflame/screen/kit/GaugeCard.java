package fairflame.screen.kit;

import fairflame.quote.Gauge;
import fairflame.screen.look.Words;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** An instrument with its title and its verdict in words beside it. */
public final class GaugeCard extends HBox {
    public GaugeCard(Gauge gauge, Words words) {
        super(14);
        setAlignment(Pos.CENTER_LEFT);
        var tone = Tone.of(gauge.verdict());
        var told = Texts.column(
                6,
                Texts.words(gauge.title(), "strong"),
                Texts.words(gauge.unit(), "small", "slate"),
                Texts.across(6, new Mark(tone), Texts.line(words.say("verdict." + tone.key()), "strong", style(tone))),
                Texts.words(gauge.words(), "small"));
        told.setAlignment(Pos.CENTER_LEFT);
        told.setMinWidth(0);
        HBox.setHgrow(told, Priority.ALWAYS);
        getChildren().addAll(new Instrument(gauge), told);
    }

    private static String style(Tone tone) {
        return switch (tone) {
            case GOOD -> "moss";
            case EDGE -> "amber";
            case OUTSIDE -> "oxide";
            case OPEN -> "slate";
        };
    }
}
