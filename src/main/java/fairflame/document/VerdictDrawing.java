package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.quote.Gauge.Verdict;
import java.util.List;

/** A verdict as a shape: a full bar within the band, a half bar at its edge, a broken bar outside. */
record VerdictDrawing(Verdict verdict) implements Drawing {
    static final double WIDTH = 24;
    private static final double BAR = 8;
    private static final double TOP = 3;

    static Ink ink(Verdict verdict) {
        return switch (verdict) {
            case GOOD -> Ink.MOSS;
            case EDGE -> Ink.AMBER;
            case OUTSIDE -> Ink.OXIDE;
        };
    }

    @Override
    public double height(double width) {
        return BAR + 2 * TOP;
    }

    @Override
    public String told() {
        return "";
    }

    @Override
    public void draw(Pen pen, Place place) {
        var ink = ink(verdict);
        var corner = new Point(place.x(), place.top() + TOP);
        switch (verdict) {
            case GOOD -> pen.rectangle(corner, WIDTH, BAR, ink);
            case EDGE -> {
                pen.rectangle(corner, WIDTH / 2, BAR, ink);
                pen.frame(new Point(corner.x() + 0.5, corner.y() + 0.5), WIDTH - 1, BAR - 1, Stroke.solid(ink, 1));
            }
            case OUTSIDE -> {
                pen.area(slanted(corner, 0, WIDTH * 0.4, 0), ink);
                pen.area(slanted(corner, WIDTH * 0.6, WIDTH, 1), ink);
            }
        }
    }

    // Half of the broken bar: its inner end is cut at a slant.
    private static List<Point> slanted(Point corner, double from, double to, int leftCut) {
        double cut = 4;
        double x = corner.x();
        double y = corner.y();
        return leftCut == 0
                ? List.of(
                        new Point(x + from, y),
                        new Point(x + to + cut / 2, y),
                        new Point(x + to - cut / 2, y + BAR),
                        new Point(x + from, y + BAR))
                : List.of(
                        new Point(x + from + cut / 2, y),
                        new Point(x + to, y),
                        new Point(x + to, y + BAR),
                        new Point(x + from - cut / 2, y + BAR));
    }
}
