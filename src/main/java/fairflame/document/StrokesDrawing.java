package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import java.util.ArrayList;
import java.util.List;

/** A drawn signature, as large as its place allows, its proportions kept. */
final class StrokesDrawing implements Drawing {
    private static final double HEIGHT = 54;
    private static final double WIDEST = 230;

    private final List<List<Point>> strokes;
    private final String told;

    /** @param strokes x,y pairs in thousandths of the pad's width, x to the right, y down */
    StrokesDrawing(List<List<Integer>> strokes, String told) {
        this.strokes = strokes.stream()
                .map(StrokesDrawing::points)
                .filter(line -> !line.isEmpty())
                .toList();
        this.told = told;
    }

    private static List<Point> points(List<Integer> pairs) {
        var points = new ArrayList<Point>();
        for (int i = 0; i + 1 < pairs.size(); i += 2) {
            points.add(new Point(pairs.get(i), pairs.get(i + 1)));
        }
        return points;
    }

    @Override
    public double height(double width) {
        return HEIGHT;
    }

    @Override
    public String told() {
        return told;
    }

    @Override
    public void draw(Pen pen, Place place) {
        var all = strokes.stream().flatMap(List::stream).toList();
        double left = all.stream().mapToDouble(Point::x).min().orElse(0);
        double top = all.stream().mapToDouble(Point::y).min().orElse(0);
        double wide = all.stream().mapToDouble(Point::x).max().orElse(0) - left;
        double high = all.stream().mapToDouble(Point::y).max().orElse(0) - top;
        double room = Math.min(WIDEST, place.width()) - 4;
        double scale = Math.min(room / Math.max(wide, 1), (HEIGHT - 6) / Math.max(high, 1));
        double lift = place.top() + HEIGHT - 3 - high * scale;
        for (var stroke : strokes) {
            var placed = stroke.stream()
                    .map(p -> new Point(place.x() + 2 + (p.x() - left) * scale, lift + (p.y() - top) * scale))
                    .toList();
            if (placed.size() == 1) {
                pen.disc(placed.get(0), 0.9, Ink.INK);
            } else {
                pen.path(placed, Stroke.solid(Ink.INK, 1.3));
            }
        }
    }
}
