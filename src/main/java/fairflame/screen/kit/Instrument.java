package fairflame.screen.kit;

import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/**
 * A water column: the allowed band etched beside the glass, the level at rest as a thin line, the level while firing as
 * the filled column, so that a dip is seen as a drop. Voltage is drawn alike.
 */
public final class Instrument extends Region {
    private static final double GLASS = 34;
    private static final double BAND = 12;
    private static final double GAP = 6;
    private static final double HEADROOM = 1.18;
    private static final double LEAST_HEIGHT = 96;

    private final Region glass = styled("glass");
    private final Region water = styled("water");
    private final Region dip = styled("dip");
    private final Region resting = styled("resting");
    private final Region band = styled("band");
    private final List<Level> levels = new ArrayList<>();
    private final Gauge gauge;
    private final double top;

    /** A figure beside the glass at its height. */
    private record Level(double value, Label label, boolean left) {}

    public Instrument(Gauge gauge) {
        this.gauge = gauge;
        this.top = top(gauge);
        setMinHeight(LEAST_HEIGHT);
        getStyleClass().add("instrument");
        water.getStyleClass().add("water-" + Tone.of(gauge.verdict()).key());
        getChildren().addAll(glass, band, dip, water, resting);
        band.setVisible(gauge.allowedLow().isPresent() || gauge.allowedHigh().isPresent());
        resting.setVisible(gauge.resting().isPresent());
        dip.setVisible(gauge.resting()
                .filter(rest -> rest.compareTo(gauge.lowest()) > 0)
                .isPresent());
        gauge.allowedHigh().ifPresent(high -> level(high, "moss", true));
        gauge.allowedLow().ifPresent(low -> level(low, "moss", true));
        gauge.resting().ifPresent(rest -> level(rest, "slate", false));
        level(gauge.lowest(), "strong", false);
        setAccessibleText(
                gauge.title() + ": " + gauge.lowest().toPlainString() + " " + gauge.unit() + ". " + gauge.words());
    }

    private void level(BigDecimal value, String style, boolean left) {
        var label = Texts.line(left ? shortened(value) : value.toPlainString(), "figure", style);
        if (left) {
            label.getStyleClass().add("small");
            label.setAlignment(Pos.CENTER_RIGHT);
        }
        levels.add(new Level(value.doubleValue(), label, left));
        getChildren().add(label);
    }

    /** Ends of a band come computed, 14.00: shown as 14. */
    private static String shortened(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static double top(Gauge gauge) {
        var highest = Math.max(
                gauge.lowest().doubleValue(),
                Math.max(number(gauge.resting()), Math.max(number(gauge.allowedLow()), number(gauge.allowedHigh()))));
        return Math.max(highest, 1e-9) * HEADROOM;
    }

    private static double number(Optional<BigDecimal> value) {
        return value.map(BigDecimal::doubleValue).orElse(0.0);
    }

    private static Region styled(String style) {
        var region = new Region();
        region.getStyleClass().add(style);
        return region;
    }

    private double leftWidth() {
        return levels.stream()
                .filter(Level::left)
                .mapToDouble(level -> level.label().prefWidth(-1))
                .max()
                .orElse(0);
    }

    private double rightWidth() {
        return levels.stream()
                .filter(level -> !level.left())
                .mapToDouble(level -> level.label().prefWidth(-1))
                .max()
                .orElse(0);
    }

    @Override
    protected double computePrefWidth(double height) {
        return leftWidth() + GAP + BAND + GLASS + GAP + rightWidth() + snappedLeftInset() + snappedRightInset();
    }

    @Override
    protected double computeMinWidth(double height) {
        return computePrefWidth(height);
    }

    @Override
    protected double computePrefHeight(double width) {
        return 1.5 * LEAST_HEIGHT;
    }

    @Override
    protected void layoutChildren() {
        var spare = Math.max(0, getWidth() - computePrefWidth(-1)) / 2;
        var x = spare + leftWidth() + GAP + BAND;
        var height = getHeight();
        glass.resizeRelocate(x, 0, GLASS, height);
        var firing = at(gauge.lowest().doubleValue());
        water.resizeRelocate(x + 2, firing, GLASS - 4, height - firing - 2);
        var rest = at(number(gauge.resting()));
        dip.resizeRelocate(x + 2, rest, GLASS - 4, Math.max(0, firing - rest));
        resting.resizeRelocate(x - 4, rest - 1, GLASS + 8, 2.5);
        var low = gauge.allowedLow().isPresent() ? at(number(gauge.allowedLow())) : height - 1;
        var high = gauge.allowedHigh().isPresent() ? at(number(gauge.allowedHigh())) : 1;
        band.resizeRelocate(x - BAND, high, BAND, Math.max(2, low - high));
        place(true, x - BAND - GAP - leftWidth(), leftWidth());
        place(false, x + GLASS + GAP, rightWidth());
    }

    private double at(double value) {
        return getHeight() * (1 - Math.min(1, Math.max(0, value / top)));
    }

    /** Labels stand at their level; two that would touch are pushed apart. */
    private void place(boolean left, double x, double width) {
        var side = levels.stream()
                .filter(level -> level.left() == left)
                .sorted((a, b) -> Double.compare(b.value(), a.value()))
                .toList();
        var free = 0.0;
        var need =
                side.stream().mapToDouble(level -> level.label().prefHeight(-1)).sum();
        for (var level : side) {
            var height = level.label().prefHeight(-1);
            var y = Math.max(free, Math.min(at(level.value()) - height / 2, getHeight() - need));
            layoutInArea(
                    level.label(),
                    x,
                    y,
                    width,
                    height,
                    0,
                    left ? javafx.geometry.HPos.RIGHT : javafx.geometry.HPos.LEFT,
                    VPos.CENTER);
            free = y + height;
            need -= height;
        }
    }
}
