package fairflame.screen.kit;

import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;

/**
 * Where the middle half of some values lies on a line from zero: a box from the first to the third quartile, a dark
 * line at the median, a triangle under the line at the value they are held against. Shapes tell them apart.
 */
public final class SpreadBar extends Region {
    private static final double HEIGHT = 34;
    private static final double MIDDLE = 13;
    private static final double BOX = 14;
    private static final double LINE = 22;
    private static final double THIN = 3;
    private static final double TRIANGLE = 7;

    private final Region axis = new Region();
    private final Region box = new Region();
    private final Region median = new Region();
    private final Polygon standard = new Polygon(0, 0, -TRIANGLE, 11, TRIANGLE, 11);
    private final Polygon beyond = new Polygon(0, -TRIANGLE, TRIANGLE, 0, 0, TRIANGLE);
    private final Values values;

    /**
     * Values of one unit.
     *
     * @param full what the whole length stands for, above zero
     */
    public record Values(double lower, double median, double upper, double standard, double full) {}

    public SpreadBar(Values values) {
        this.values = values;
        axis.getStyleClass().add("spread-axis");
        box.getStyleClass().add("spread-box");
        median.getStyleClass().add("spread-median");
        standard.getStyleClass().add("spread-standard");
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
        beyond.getStyleClass().add("spread-beyond");
        beyond.setVisible(values.upper() > values.full());
        getChildren().addAll(axis, box, median, standard, beyond);
    }

    private double at(double value) {
        return TRIANGLE + Math.min(1, value / values.full()) * (getWidth() - 2 * TRIANGLE);
    }

    @Override
    protected void layoutChildren() {
        axis.resizeRelocate(TRIANGLE, MIDDLE - 1, getWidth() - 2 * TRIANGLE, 2);
        var from = at(values.lower());
        box.resizeRelocate(from, MIDDLE - BOX / 2, Math.max(THIN, at(values.upper()) - from), BOX);
        median.resizeRelocate(at(values.median()) - THIN / 2, MIDDLE - LINE / 2, THIN, LINE);
        standard.setLayoutX(at(values.standard()));
        standard.setLayoutY(MIDDLE + BOX / 2 + 2);
        beyond.setLayoutX(getWidth() - TRIANGLE);
        beyond.setLayoutY(MIDDLE);
    }
}
