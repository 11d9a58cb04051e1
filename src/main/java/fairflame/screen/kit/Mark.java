package fairflame.screen.kit;

import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** A verdict as a shape: full bar within the band, half bar at its edge, broken bar outside, empty bar when open. */
public final class Mark extends HBox {
    private static final double WIDTH = 27;
    private static final double HEIGHT = 10;
    private static final double PIECE = 7;
    private static final double GAP = 3;

    public Mark(Tone tone) {
        setAlignment(Pos.CENTER_LEFT);
        setMinSize(WIDTH, HEIGHT);
        setMaxSize(WIDTH, HEIGHT);
        getStyleClass().add("mark-frame-" + tone.key());
        switch (tone) {
            case GOOD -> getChildren().add(bar(tone, WIDTH));
            case EDGE -> getChildren().add(bar(tone, WIDTH / 2));
            case OUTSIDE -> {
                setSpacing(GAP);
                getChildren().addAll(bar(tone, PIECE), bar(tone, PIECE), bar(tone, PIECE));
            }
            case OPEN -> getChildren().add(bar(tone, 0));
        }
    }

    private static Region bar(Tone tone, double width) {
        var bar = new Region();
        bar.getStyleClass().add("mark-" + tone.key());
        bar.setMinSize(width, HEIGHT);
        bar.setMaxSize(width, HEIGHT);
        return bar;
    }
}
