package fairflame.screen.stock;

import fairflame.invoice.report.TimeComparison;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** The middle half of the jobs as a bar with its median, and the standard time as a dashed line. */
final class HoursBar extends Pane {
    private static final double HEIGHT = 34;
    private static final double BAR = 14;

    private final TimeComparison comparison;

    HoursBar(TimeComparison comparison) {
        this.comparison = comparison;
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        getStyleClass().add("steps");
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        var most =
                Math.max(comparison.upper().doubleValue(), comparison.standard().doubleValue()) * 1.15;
        var scale = (getWidth() - 24) / most;
        var top = (HEIGHT - BAR) / 2;
        var bar = new Rectangle(
                12 + comparison.lower().doubleValue() * scale,
                top,
                Math.max(
                        3,
                        (comparison.upper().doubleValue() - comparison.lower().doubleValue()) * scale),
                BAR);
        bar.getStyleClass().add("hours-bar");
        var median = line(comparison.median().doubleValue(), scale, top - 3, HEIGHT - top + 3);
        median.getStyleClass().add("hours-median");
        var standard = line(comparison.standard().doubleValue(), scale, 2, HEIGHT - 2);
        standard.getStyleClass().add("hours-standard");
        getChildren().addAll(bar, median, standard);
    }

    private static Line line(double hours, double scale, double from, double to) {
        var x = 12 + hours * scale;
        return new Line(x, from, x, to);
    }
}
