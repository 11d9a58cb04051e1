package fairflame.document;

import fairflame.document.page.Dash;
import fairflame.document.page.Drawing;
import fairflame.document.page.Face;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Box;
import fairflame.gas.Drawing.Disc;
import fairflame.gas.Drawing.Line;
import fairflame.gas.Drawing.Shape;
import fairflame.gas.Drawing.Words;
import java.util.ArrayList;
import java.util.List;

/** A drawing of gas piping, made smaller to fit the width of the text and the height of a page. */
public final class GasLinePicture implements Drawing {
    // Leaves room for a heading on a page of either size.
    private static final double HIGHEST = 600;
    private static final int ROUND = 6;

    private final fairflame.gas.Drawing drawing;

    private GasLinePicture(fairflame.gas.Drawing drawing) {
        this.drawing = drawing;
    }

    public static GasLinePicture of(fairflame.gas.Drawing drawing) {
        return new GasLinePicture(drawing);
    }

    private double scale(double width) {
        return Math.min(1, Math.min(width / drawing.width(), HIGHEST / drawing.height()));
    }

    @Override
    public double height(double width) {
        return drawing.height() * scale(width);
    }

    @Override
    public String told() {
        return drawing.title();
    }

    @Override
    public void draw(Pen pen, Place place) {
        var to = new Scaled(pen, place, scale(place.width()));
        drawing.shapes().forEach(to::draw);
    }

    private record Scaled(Pen pen, Place place, double scale) {
        void draw(Shape shape) {
            if (shape instanceof Line line) {
                line(line);
            } else if (shape instanceof Box box) {
                box(box);
            } else if (shape instanceof Disc disc) {
                disc(disc);
            } else if (shape instanceof Words words) {
                words(words);
            }
        }

        private Point at(double x, double y) {
            return new Point(place.x() + x * scale, place.top() + y * scale);
        }

        private void line(Line line) {
            var dash = line.dashes().isEmpty() ? Dash.SOLID : Dash.DASHED;
            pen.line(
                    at(line.x1(), line.y1()),
                    at(line.x2(), line.y2()),
                    new Stroke(ink(line.ink()), line.width() * scale, dash));
        }

        private void box(Box box) {
            var outline = outline(box);
            pen.area(outline, ink(box.fill()));
            if (box.stroke() > 0) {
                pen.path(closed(outline), Stroke.solid(ink(box.outline()), box.stroke() * scale));
            }
        }

        // A rectangle whose corners are rounded by a few short lines.
        private List<Point> outline(Box box) {
            double r = Math.min(box.corner(), Math.min(box.width(), box.height()) / 2);
            var points = new ArrayList<Point>();
            for (int quarter = 0; quarter < 4; quarter++) {
                double x = quarter == 0 || quarter == 3 ? box.x() + box.width() - r : box.x() + r;
                double y = quarter < 2 ? box.y() + box.height() - r : box.y() + r;
                for (int i = 0; i <= ROUND; i++) {
                    double turn = Math.PI / 2 * (quarter + (double) i / ROUND);
                    points.add(at(x + r * Math.cos(turn), y + r * Math.sin(turn)));
                }
            }
            return points;
        }

        private static List<Point> closed(List<Point> points) {
            var round = new ArrayList<>(points);
            round.add(points.get(0));
            return round;
        }

        private void disc(Disc disc) {
            var centre = at(disc.x(), disc.y());
            double radius = disc.radius() * scale;
            pen.disc(centre, radius + disc.stroke() * scale / 2, ink(disc.outline()));
            pen.disc(centre, radius - disc.stroke() * scale / 2, ink(disc.fill()));
        }

        private void words(Words words) {
            double size = words.size() * scale;
            var face = words.bold() ? Face.SEMIBOLD : Face.REGULAR;
            var text = Text.of(words.text(), new Style(face, size, size, ink(words.ink())));
            var point = at(words.x(), words.y());
            double back = words.anchor() == Anchor.START ? 0 : words.anchor() == Anchor.MIDDLE ? 0.5 : 1;
            text.draw(pen, point.x() - back * text.width(), point.y());
        }

        private static Ink ink(fairflame.gas.Drawing.Ink ink) {
            return Ink.valueOf(ink.name());
        }
    }
}
