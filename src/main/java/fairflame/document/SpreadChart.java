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
 * Hours worked against the standard: a bar from the first to the third quartile, a dark line at the median, a copper
 * triangle under the row at the standard. Shapes tell them apart without colour.
 */
final class SpreadChart implements Drawing {
    private static final double ROW = 28;
    private static final double BAR = 10;
    private static final double NAMES = 0.46;
    private static final double FIGURES = 120;

    private final String told;
    private final List<Spread> spreads;
    private final double full;

    SpreadChart(String told, List<Spread> spreads) {
        this.told = told;
        this.spreads = List.copyOf(spreads);
        this.full = spreads.stream()
                        .mapToDouble(spread -> Math.max(spread.upper(), spread.standard()))
                        .max()
                        .orElse(1)
                * 1.08;
    }

    /** One row, all in hours. */
    record Spread(String name, double lower, double median, double upper, double standard, String figure) {}

    @Override
    public double height(double width) {
        return Math.max(ROW, spreads.size() * ROW) + 6;
    }

    @Override
    public void draw(Pen pen, Place place) {
        var names = place.width() * NAMES;
        var left = place.x() + names + 8;
        var length = place.width() - names - 8 - FIGURES;
        var top = place.top();
        for (var row : spreads) {
            var middle = top + ROW / 2 - 2;
            Text.of(row.name(), Type.SMALL).fitted(names).draw(pen, place.x(), middle + 3.5);
            pen.line(new Point(left, middle), new Point(left + length, middle), Stroke.solid(Ink.RULE, 0.5));
            var from = left + row.lower() / full * length;
            var to = left + row.upper() / full * length;
            pen.rectangle(new Point(from, middle - BAR / 2), Math.max(1.5, to - from), BAR, Ink.WATER);
            var median = left + row.median() / full * length;
            pen.line(
                    new Point(median, middle - BAR / 2 - 2),
                    new Point(median, middle + BAR / 2 + 2),
                    Stroke.solid(Ink.INK, 1.6));
            var standard = left + row.standard() / full * length;
            pen.area(
                    List.of(
                            new Point(standard, middle + BAR / 2 + 1),
                            new Point(standard - 4, middle + BAR / 2 + 8),
                            new Point(standard + 4, middle + BAR / 2 + 8)),
                    Ink.COPPER);
            var figure = Text.of(row.figure(), Type.FIGURES);
            figure.draw(pen, place.x() + place.width() - figure.width(), middle + 3.5);
            top += ROW;
        }
    }

    @Override
    public String told() {
        return told;
    }
}
