package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.document.page.Text;
import java.util.List;

/**
 * Horizontal bars on one scale from zero, each with its name at the left and its figure at the right, so that nothing
 * has to be read off an axis.
 */
final class BarChart implements Drawing {
    private static final double ROW = 22;
    private static final double BAR = 12;
    private static final double NAMES = 0.46;
    private static final double FIGURES = 96;

    private final String told;
    private final List<Bar> bars;
    private final double full;

    /**
     * The chart.
     *
     * @param told the picture in words
     * @param full what a bar over the whole width stands for; the longest bar when it is zero
     */
    BarChart(String told, List<Bar> bars, double full) {
        this.told = told;
        this.bars = List.copyOf(bars);
        var longest = bars.stream().mapToDouble(Bar::size).max().orElse(1);
        this.full = full > 0 ? full : Math.max(longest, 1e-9);
    }

    /**
     * One bar.
     *
     * @param size zero or more
     * @param figure as printed
     */
    record Bar(String name, double size, String figure, Ink ink) {}

    @Override
    public double height(double width) {
        return Math.max(ROW, bars.size() * ROW) + 4;
    }

    @Override
    public void draw(Pen pen, Place place) {
        var names = place.width() * NAMES;
        var left = place.x() + names + 8;
        var length = place.width() - names - 8 - FIGURES;
        var top = place.top();
        for (var bar : bars) {
            var baseline = top + ROW / 2 + 3.5;
            Text.of(bar.name(), Type.SMALL).fitted(names).draw(pen, place.x(), baseline);
            pen.rectangle(new Point(left, top + (ROW - BAR) / 2), length, BAR, Ink.PAPER);
            var part = Math.min(1, bar.size() / full) * length;
            if (part > 0) {
                pen.rectangle(new Point(left, top + (ROW - BAR) / 2), part, BAR, bar.ink());
            }
            pen.frame(new Point(left, top + (ROW - BAR) / 2), length, BAR, Stroke.solid(Ink.RULE, 0.5));
            var figure = Text.of(bar.figure(), Type.FIGURES);
            figure.draw(pen, place.x() + place.width() - figure.width(), baseline);
            top += ROW;
        }
    }

    @Override
    public String told() {
        return told;
    }
}
