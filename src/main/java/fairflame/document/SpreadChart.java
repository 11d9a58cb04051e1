package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Drawing;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import java.util.List;

/**
 * Hours worked against the standard: a box from the first to the third quartile, a dark line at the median, a copper
 * triangle under the row at the standard. Every row is drawn to its own standard, so that a job of ten hours leaves one
 * of a quarter legible; what lies beyond three times the standard ends in a point at the right. Shapes tell them apart
 * without colour. Rows go on over the page.
 */
final class SpreadChart {
    private static final double GAP = 10;
    private static final double NAMES = 0.48;
    private static final double PICTURES = 0.52;
    /** Least and most that the whole width stands for, in standard times. */
    private static final double LEAST = 1.3;

    private static final double MOST = 3;

    private SpreadChart() {}

    /** One row, all in hours. */
    record Spread(String name, double lower, double median, double upper, double standard, String figure) {}

    static Block of(List<Spread> spreads) {
        var widest = spreads.stream()
                .mapToDouble(spread -> spread.upper() / spread.standard())
                .max()
                .orElse(1);
        var full = Math.min(MOST, Math.max(LEAST, widest)) * 1.04;
        var figures = BarChart.widest(spreads.stream().map(Spread::figure).toList());
        return new Grid(
                new Columns(List.of(Columns.share(NAMES), Columns.share(PICTURES), Columns.fixed(figures)), GAP),
                List.of(),
                spreads.stream()
                        .map(spread -> BarChart.row(spread.name(), new Box(spread, full), spread.figure()))
                        .toList(),
                Grid.Kind.TABLE);
    }

    private record Box(Spread spread, double full) implements Drawing {
        private static final double HEIGHT = 22;
        private static final double MIDDLE = 8;
        private static final double BOX = 10;
        private static final double SLIVER = 1.5;
        private static final double SIDE = 4;

        @Override
        public double height(double width) {
            return HEIGHT;
        }

        @Override
        public void draw(Pen pen, Place place) {
            var middle = place.top() + MIDDLE;
            pen.line(
                    new Point(place.x(), middle),
                    new Point(place.x() + place.width(), middle),
                    Stroke.solid(Ink.RULE, 0.5));
            var from = at(place, spread.lower());
            var width = Math.max(SLIVER, at(place, spread.upper()) - from);
            pen.rectangle(new Point(from, middle - BOX / 2), width, BOX, Ink.WATER);
            pen.frame(new Point(from, middle - BOX / 2), width, BOX, Stroke.solid(Ink.LAGOON, 0.6));
            var median = at(place, spread.median());
            pen.line(
                    new Point(median, middle - BOX / 2 - 2),
                    new Point(median, middle + BOX / 2 + 2),
                    Stroke.solid(Ink.INK, 1.6));
            if (spread.upper() / spread.standard() > full) {
                var end = place.x() + place.width();
                pen.area(
                        List.of(
                                new Point(end - SIDE, middle - SIDE),
                                new Point(end, middle),
                                new Point(end - SIDE, middle + SIDE)),
                        Ink.INK);
            }
            var standard = at(place, spread.standard());
            pen.area(
                    List.of(
                            new Point(standard, middle + BOX / 2 + 1),
                            new Point(standard - SIDE, middle + BOX / 2 + 8),
                            new Point(standard + SIDE, middle + BOX / 2 + 8)),
                    Ink.COPPER);
        }

        private double at(Place place, double hours) {
            return place.x() + SIDE + Math.min(1, hours / spread.standard() / full) * (place.width() - 2 * SIDE);
        }

        @Override
        public String told() {
            return "";
        }
    }
}
