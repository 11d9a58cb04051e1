package fairflame.screen.kit;

import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;

/** Columns of equal width and height; stacked when one would become narrower than can be read. */
public final class Columns extends Pane {
    private static final double BODY = 16;

    /** Shows how large the type is here; never seen itself. */
    private final Label type = new Label();

    private final double leastAtBody;
    private final double gap;

    /**
     * Columns for these nodes.
     *
     * @param leastWidth narrowest readable column at the usual text size, pixels; grows with the text
     */
    public Columns(double leastWidth, double gap, List<? extends Node> nodes) {
        this.leastAtBody = leastWidth;
        type.setManaged(false);
        type.setVisible(false);
        this.gap = gap;
        getChildren().add(type);
        getChildren().addAll(nodes);
    }

    private double leastWidth() {
        return leastAtBody * type.getFont().getSize() / BODY;
    }

    private int across(double width) {
        var most = (int) Math.max(1, Math.floor((width + gap) / (leastWidth() + gap)));
        var count = Math.max(1, getManagedChildren().size());
        if (most >= count) {
            return count;
        }
        // Rows as even as can be: four things in a place for three stand two by two.
        var rows = (int) Math.ceil((double) count / most);
        return (int) Math.ceil((double) count / rows);
    }

    private double columnWidth(double width) {
        var across = across(width);
        return Math.floor((width - gap * (across - 1)) / across);
    }

    private double rowHeight(int from, double width) {
        var nodes = getManagedChildren();
        var height = 0.0;
        for (int i = from; i < Math.min(nodes.size(), from + across(width)); i++) {
            height = Math.max(height, nodes.get(i).prefHeight(columnWidth(width)));
        }
        return Math.ceil(height);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        var used = width < 0 ? computePrefWidth(-1) : width;
        var height = 0.0;
        for (int i = 0; i < getManagedChildren().size(); i += across(used)) {
            height += rowHeight(i, used) + (i > 0 ? gap : 0);
        }
        return height;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width < 0 ? getWidth() : width);
    }

    @Override
    protected double computePrefWidth(double height) {
        var count = getManagedChildren().size();
        return count * leastWidth() + Math.max(0, count - 1) * gap;
    }

    @Override
    protected double computeMinWidth(double height) {
        return Math.min(leastWidth(), leastAtBody);
    }

    @Override
    protected void layoutChildren() {
        var nodes = getManagedChildren();
        var across = across(getWidth());
        var width = columnWidth(getWidth());
        var y = 0.0;
        for (int from = 0; from < nodes.size(); from += across) {
            var height = rowHeight(from, getWidth());
            for (int i = from; i < Math.min(nodes.size(), from + across); i++) {
                nodes.get(i).resizeRelocate((i - from) * (width + gap), y, width, height);
            }
            y += height + gap;
        }
    }
}
