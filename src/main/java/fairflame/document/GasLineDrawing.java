package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Face;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Box;
import fairflame.gas.Drawing.Disc;
import fairflame.gas.Drawing.Line;
import fairflame.gas.Drawing.Shape;
import fairflame.gas.Drawing.Words;

/** A gas line's drawing on paper, scaled to the width of the text. */
public final class GasLineDrawing implements Drawing {
    private final fairflame.gas.Drawing drawing;

    public GasLineDrawing(fairflame.gas.Drawing drawing) {
        this.drawing = drawing;
    }

    @Override
    public double height(double width) {
        return drawing.height() * scale(width);
    }

    @Override
    public String told() {
        return drawing.title();
    }

    /** Never larger than it was drawn: a short line would shout. */
    private double scale(double width) {
        return Math.min(1, width / drawing.width());
    }

    @Override
    public void draw(Pen pen, Place place) {
        var scale = scale(place.width());
        drawing.shapes().forEach(shape -> draw(new Scaled(pen, place, scale), shape));
    }

    private static void draw(Scaled on, Shape shape) {
        if (shape instanceof Line line) {
            var stroke = line.dashes().isEmpty()
                    ? Stroke.solid(ink(line.ink()), line.width() * on.scale)
                    : Stroke.dashed(ink(line.ink()), line.width() * on.scale);
            on.pen.line(on.point(line.x1(), line.y1()), on.point(line.x2(), line.y2()), stroke);
        } else if (shape instanceof Box box) {
            box(on, box);
        } else if (shape instanceof Disc disc) {
            if (disc.stroke() > 0) {
                on.pen.disc(
                        on.point(disc.x(), disc.y()),
                        (disc.radius() + disc.stroke() / 2) * on.scale,
                        ink(disc.outline()));
            }
            on.pen.disc(on.point(disc.x(), disc.y()), (disc.radius() - disc.stroke() / 2) * on.scale, ink(disc.fill()));
        } else {
            words(on, (Words) shape);
        }
    }

    private static void box(Scaled on, Box box) {
        var corner = on.point(box.x(), box.y());
        on.pen.rectangle(corner, box.width() * on.scale, box.height() * on.scale, ink(box.fill()));
        if (box.stroke() > 0) {
            on.pen.frame(
                    corner,
                    box.width() * on.scale,
                    box.height() * on.scale,
                    Stroke.solid(ink(box.outline()), box.stroke() * on.scale));
        }
    }

    private static void words(Scaled on, Words words) {
        var size = words.size() * on.scale;
        var style = new Style(words.bold() ? Face.BOLD : Face.REGULAR, size, size * 4 / 3, ink(words.ink()));
        var width = style.width(words.text());
        var at = on.point(words.x(), words.y());
        var x = at.x() - (words.anchor() == Anchor.START ? 0 : words.anchor() == Anchor.END ? width : width / 2);
        on.pen.words(words.text(), style, x, at.y());
    }

    private static Ink ink(fairflame.gas.Drawing.Ink ink) {
        return Ink.valueOf(ink.name());
    }

    private record Scaled(Pen pen, Place place, double scale) {
        Point point(double x, double y) {
            return new Point(place.x() + x * scale, place.top() + y * scale);
        }
    }
}
