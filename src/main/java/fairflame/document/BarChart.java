package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Drawing;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Pen;
import fairflame.document.page.Picture;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Row;
import fairflame.document.page.Stroke;
import fairflame.document.page.Text;
import java.util.List;

/**
 * Horizontal bars on one scale from zero, each with its name at the left, in as many lines as it needs, and its figure
 * at the right edge, so that nothing has to be read off an axis. Rows go on over the page.
 */
final class BarChart {
    private static final double GAP = 10;
    private static final double NAMES = 0.48;
    private static final double BARS = 0.52;

    private BarChart() {}

    /**
     * One bar.
     *
     * @param size zero or more
     * @param figure as printed
     */
    record Bar(String name, double size, String figure, Ink ink) {}

    /**
     * The chart.
     *
     * @param full what a bar over the whole width stands for; the longest bar when it is zero
     */
    static Block of(List<Bar> bars, double full) {
        var longest = bars.stream().mapToDouble(Bar::size).max().orElse(1);
        var scale = full > 0 ? full : Math.max(longest, 1e-9);
        var figures = widest(bars.stream().map(Bar::figure).toList());
        return new Grid(
                new Columns(List.of(Columns.share(NAMES), Columns.share(BARS), Columns.fixed(figures)), GAP),
                List.of(),
                bars.stream()
                        .map(bar -> row(bar.name(), new Stick(bar.size() / scale, bar.ink()), bar.figure()))
                        .toList(),
                Grid.Kind.TABLE);
    }

    /** Width of the figures' column, points. */
    static double widest(List<String> figures) {
        return figures.stream()
                        .mapToDouble(figure -> Text.of(figure, Type.FIGURES).width())
                        .max()
                        .orElse(0)
                + 1;
    }

    /** Name, picture and figure of one row. */
    static Row row(String name, Drawing picture, String figure) {
        return Row.of(Paragraph.of(name, Type.SMALL), new Picture(picture), Paragraph.right(figure, Type.FIGURES))
                .padded(3, 3)
                .ruled(Type.QUIET_RULE);
    }

    /** One bar in its frame; the words beside it tell what it shows. */
    private record Stick(double share, Ink ink) implements Drawing {
        private static final double HEIGHT = 11;
        private static final double SLIVER = 1.5;

        @Override
        public double height(double width) {
            return HEIGHT + 1;
        }

        @Override
        public void draw(Pen pen, Place place) {
            var corner = new Point(place.x(), place.top() + 0.5);
            pen.rectangle(corner, place.width(), HEIGHT, Ink.PAPER);
            var part = Math.min(1, share) * place.width();
            if (part > 0) {
                pen.rectangle(corner, Math.max(SLIVER, part), HEIGHT, ink);
            }
            pen.frame(corner, place.width(), HEIGHT, Stroke.solid(Ink.RULE, 0.5));
        }

        @Override
        public String told() {
            return "";
        }
    }
}
