package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import java.util.ArrayList;
import java.util.List;

/** A flame over two lines of water: what the shop works on. */
final class MarkDrawing implements Drawing {
    private static final int STEPS = 24;

    @Override
    public double height(double width) {
        return width * 1.05;
    }

    @Override
    public String told() {
        return "";
    }

    @Override
    public void draw(Pen pen, Place place) {
        pen.area(flame(place, 1.0, 0.0), Ink.COPPER);
        pen.area(flame(place, 0.42, 0.25), Ink.WHITE);
        for (double level : List.of(0.86, 0.99)) {
            pen.path(wave(place, level), Stroke.solid(Ink.LAGOON, place.width() * 0.07));
        }
    }

    // A drop with its tip bent: half a circle below, two curves that meet above.
    private static List<Point> flame(Place place, double scale, double lift) {
        double unit = place.width() * 0.72;
        double middle = place.x() + place.width() / 2;
        double foot = place.top() + unit;
        var points = new ArrayList<Point>();
        for (int i = 0; i <= STEPS; i++) {
            double turn = Math.PI * i / STEPS;
            points.add(new Point(
                    middle + Math.cos(turn) * 0.31 * unit * scale,
                    foot - unit * (0.31 - 0.31 * Math.sin(turn)) * scale));
        }
        for (int i = 0; i <= STEPS; i++) {
            double t = (double) i / STEPS;
            double side = -0.31 * (1 - t) * (1 - t) + 2 * t * (1 - t) * -0.30 + t * t * 0.06;
            points.add(new Point(middle + side * unit * scale, foot - unit * (0.31 + 0.69 * t) * scale));
        }
        for (int i = STEPS; i >= 0; i--) {
            double t = (double) i / STEPS;
            double side = 0.31 * (1 - t) * (1 - t) + 2 * t * (1 - t) * 0.34 + t * t * 0.06;
            points.add(new Point(middle + side * unit * scale, foot - unit * (0.31 + 0.69 * t) * scale));
        }
        return points.stream()
                .map(p -> new Point(p.x(), p.y() - lift * 0.1 * unit))
                .toList();
    }

    private static List<Point> wave(Place place, double level) {
        var points = new ArrayList<Point>();
        for (int i = 0; i <= 2 * STEPS; i++) {
            double t = i / (2.0 * STEPS);
            double rise = Math.sin(t * 3 * Math.PI) * place.width() * 0.035;
            points.add(new Point(place.x() + t * place.width(), place.top() + level * place.width() - rise));
        }
        return points;
    }
}
