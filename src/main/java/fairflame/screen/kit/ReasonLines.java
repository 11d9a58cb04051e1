package fairflame.screen.kit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.shape.CubicCurve;

/** Readings on the left, causes on the right: solid lines support, dashed speak against, dotted are untested. */
public final class ReasonLines extends Region {
    private static final double SHARE_OF_READINGS = 0.47;
    private static final double SHARE_OF_GAP = 0.13;
    private static final double GAP = 10;
    private static final double LEAST_TARGET = 48;

    /** How a reading bears on a cause. */
    public enum Bearing {
        SUPPORTS,
        AGAINST,
        UNTESTED;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One line: from the reading's words to the cause. */
    public record Reason(String words, Bearing bearing) {}

    /**
     * A cause and all that bears on it.
     *
     * @param standing a word such as "settled"
     * @param style style class of the standing: settled, likely, open, ruled-out
     * @param why shows all that bears on it, with the readings
     */
    public record Cause(String title, String standing, String style, List<Reason> reasons, Runnable why) {
        public Cause {
            reasons = List.copyOf(reasons);
        }
    }

    private record Tie(Region reading, Region cause, CubicCurve line) {}

    private final List<Region> readings = new ArrayList<>();
    private final List<Region> causes = new ArrayList<>();
    private final List<Tie> ties = new ArrayList<>();
    private final Map<String, Region> byWords = new HashMap<>();

    public ReasonLines(List<Cause> shown) {
        for (var cause : shown) {
            var said = Texts.column(
                    2, Texts.words(cause.standing(), "small", "slate"), Texts.words(cause.title(), "strong"));
            said.setMinWidth(0);
            HBox.setHgrow(said, Priority.ALWAYS);
            var box = new Press(cause.title() + ", " + cause.standing(), cause.why(), said);
            box.styled("cause", cause.style());
            box.setId("cause-" + causes.size());
            box.setMinHeight(LEAST_TARGET);
            causes.add(box);
            for (var reason : cause.reasons()) {
                tie(reason, box);
            }
        }
        ties.forEach(tie -> getChildren().add(tie.line()));
        getChildren().addAll(readings);
        getChildren().addAll(causes);
    }

    private void tie(Reason reason, Region cause) {
        var known = byWords.get(reason.words());
        var box = known == null ? reading(reason) : known;
        var line = new CubicCurve();
        line.getStyleClass().addAll("reason-line", "reason-" + reason.bearing().key());
        ties.add(new Tie(box, cause, line));
    }

    private Region reading(Reason reason) {
        var words = Texts.words(reason.words(), "small");
        if (reason.bearing() == Bearing.UNTESTED) {
            words.getStyleClass().add("open");
        }
        var box = Texts.column(0, words);
        box.getStyleClass().addAll("reason", "reason-" + reason.bearing().key() + "-note");
        readings.add(box);
        byWords.put(reason.words(), box);
        return box;
    }

    private double readingsWidth(double width) {
        return Math.floor(width * SHARE_OF_READINGS);
    }

    private double causesWidth(double width) {
        return width - readingsWidth(width) - Math.floor(width * SHARE_OF_GAP);
    }

    private static double stack(List<Region> boxes, double width) {
        return boxes.stream().mapToDouble(box -> box.prefHeight(width) + GAP).sum();
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        var used = width < 0 ? 400 : width;
        return Math.max(stack(readings, readingsWidth(used)), stack(causes, causesWidth(used)));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 400;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 200;
    }

    @Override
    protected void layoutChildren() {
        var left = readingsWidth(getWidth());
        var right = causesWidth(getWidth());
        lay(readings, 0, left);
        lay(causes, getWidth() - right, right);
        for (var tie : ties) {
            draw(tie, left, getWidth() - right);
        }
    }

    private void lay(List<Region> boxes, double x, double width) {
        var spare = Math.max(0, getHeight() - stack(boxes, width)) / (boxes.size() + 1);
        var y = boxes == causes ? spare : 0;
        for (var box : boxes) {
            var height = box.prefHeight(width);
            box.resizeRelocate(x, y, width, height);
            y += height + GAP + (boxes == causes ? spare : 0);
        }
    }

    private static void draw(Tie tie, double from, double to) {
        var start = tie.reading().getLayoutY() + tie.reading().getHeight() / 2;
        var end = tie.cause().getLayoutY() + tie.cause().getHeight() / 2;
        var line = tie.line();
        line.setStartX(from);
        line.setStartY(start);
        line.setEndX(to);
        line.setEndY(end);
        line.setControlX1((from + to) / 2);
        line.setControlY1(start);
        line.setControlX2((from + to) / 2);
        line.setControlY2(end);
    }
}
