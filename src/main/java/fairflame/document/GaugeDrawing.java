package fairflame.document;

import fairflame.document.page.Drawing;
import fairflame.document.page.Ink;
import fairflame.document.page.Pen;
import fairflame.document.page.Place;
import fairflame.document.page.Point;
import fairflame.document.page.Stroke;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.quote.Gauge;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A water column: the level while firing as the filled column, the level at rest as a thin line, the allowed band
 * etched beside the tube. The dip is seen as a drop.
 */
final class GaugeDrawing implements Drawing {
    private static final double HEIGHT = 118;
    private static final double TUBE = 22;
    private static final double AXIS = 26;
    private static final double BAND = 9;
    private static final double LABEL_STEP = 11;
    private static final double HATCH = 3.2;

    private final Gauge gauge;
    private final GaugeScale scale;
    private final PaperText text;

    GaugeDrawing(Gauge gauge, PaperText text) {
        this.gauge = gauge;
        this.scale = GaugeScale.of(gauge);
        this.text = text;
    }

    @Override
    public double height(double width) {
        return HEIGHT;
    }

    @Override
    public String told() {
        return text.say(
                Label.GAUGE_TOLD,
                gauge.title(),
                GaugeBlock.verdict(gauge.verdict(), text),
                text.figures().number(gauge.lowest()),
                gauge.unit());
    }

    @Override
    public void draw(Pen pen, Place place) {
        var tube = new Tube(place.x() + AXIS, place.top() + 14, place.top() + HEIGHT - 6);
        drawAxis(pen, tube);
        drawBand(pen, tube);
        drawColumn(pen, tube);
        drawLabels(pen, tube);
    }

    /** The tube's left edge, upper and lower end. */
    private record Tube(double left, double top, double foot) {
        double right() {
            return left + TUBE;
        }
    }

    private double y(Tube tube, BigDecimal value) {
        return tube.foot() - (tube.foot() - tube.top()) * scale.level(value);
    }

    private void drawAxis(Pen pen, Tube tube) {
        var style = Type.TINY_FIGURES;
        for (var tick : scale.ticks()) {
            double y = y(tube, tick);
            pen.line(new Point(tube.left() - 3, y), new Point(tube.left(), y), Stroke.solid(Ink.SLATE, 0.5));
            var words = text.figures().shortest(tick);
            double width = Text.of(words, style).width();
            pen.words(words, style, tube.left() - 5 - width, y + 2.6);
        }
        set(pen, gauge.unit(), Type.QUIET, tube.left() - AXIS, tube.top() - 7);
    }

    private void drawBand(Pen pen, Tube tube) {
        if (gauge.allowedLow().isEmpty() && gauge.allowedHigh().isEmpty()) {
            return;
        }
        double upper = y(tube, gauge.allowedHigh().orElse(scale.high()));
        double lower = y(tube, gauge.allowedLow().orElse(scale.low()));
        pen.rectangle(new Point(tube.left(), upper), TUBE + BAND, lower - upper, Ink.BAND);
        var fine = Stroke.solid(Ink.MOSS, 0.5);
        double left = tube.right() + 1.5;
        for (double y = upper + HATCH; y < lower; y += HATCH) {
            pen.line(new Point(left, y), new Point(tube.right() + BAND, y - HATCH / 2), fine);
        }
        for (double edge : List.of(upper, lower)) {
            pen.line(new Point(tube.left(), edge), new Point(tube.right() + BAND, edge), Stroke.solid(Ink.MOSS, 1.1));
        }
    }

    private void drawColumn(Pen pen, Tube tube) {
        double level = y(tube, gauge.lowest());
        double ground = y(tube, scale.low().max(BigDecimal.ZERO));
        pen.rectangle(
                new Point(tube.left() + 1, Math.min(level, ground)), TUBE - 2, Math.abs(ground - level), Ink.WATER);
        pen.line(new Point(tube.left(), level), new Point(tube.right(), level), Stroke.solid(Ink.LAGOON, 1.6));
        gauge.resting().ifPresent(rest -> {
            double y = y(tube, rest);
            pen.line(new Point(tube.left() - 2, y), new Point(tube.right() + 2, y), Stroke.solid(Ink.INK, 0.9));
            drawDrop(pen, tube, y, level);
        });
        var wall = List.of(
                new Point(tube.left(), tube.top() - 4),
                new Point(tube.left(), tube.foot()),
                new Point(tube.right(), tube.foot()),
                new Point(tube.right(), tube.top() - 4));
        pen.path(wall, Stroke.solid(Ink.INK, 1));
    }

    private static void drawDrop(Pen pen, Tube tube, double from, double to) {
        if (to - from < 8) {
            return;
        }
        double middle = tube.left() + TUBE / 2;
        pen.line(new Point(middle, from + 2), new Point(middle, to - 5), Stroke.dashed(Ink.INK, 0.8));
        pen.area(
                List.of(new Point(middle - 2.6, to - 6), new Point(middle + 2.6, to - 6), new Point(middle, to - 1.5)),
                Ink.INK);
    }

    private record Tag(double y, String figure, String words, Style style) {}

    private void drawLabels(Pen pen, Tube tube) {
        var tags = new ArrayList<Tag>();
        var figures = text.figures();
        var firing = gauge.resting().isPresent() ? Label.LOWEST : Label.MEASURED;
        tags.add(new Tag(
                y(tube, gauge.lowest()), figures.number(gauge.lowest()), text.say(firing), Type.FIGURES_STRONG));
        gauge.resting().ifPresent(rest -> {
            tags.add(new Tag(y(tube, rest), figures.number(rest), text.say(Label.RESTING), Type.FIGURES));
            var drop = rest.subtract(gauge.lowest());
            if (drop.signum() > 0) {
                var words = text.say(Label.DROP, figures.number(drop));
                double middle = (y(tube, rest) + y(tube, gauge.lowest())) / 2;
                tags.add(new Tag(middle, "", words, Type.QUIET));
            }
        });
        tags.sort(Comparator.comparingDouble(Tag::y));
        var places = apart(tags.stream().map(Tag::y).toList(), tube);
        double left = tube.right() + BAND + 5;
        for (int i = 0; i < tags.size(); i++) {
            var tag = tags.get(i);
            double baseline = places.get(i) + 3.2;
            set(pen, tag.figure(), tag.style(), left, baseline);
            double wide = tag.figure().isEmpty()
                    ? 0
                    : Text.of(tag.figure(), tag.style()).width() + 3;
            set(pen, tag.words(), Type.QUIET, left + wide, baseline);
        }
    }

    // Levels that nearly meet would print one word over the other: push them apart, downwards, then up from the foot.
    private static List<Double> apart(List<Double> wanted, Tube tube) {
        var places = new ArrayList<>(wanted);
        for (int i = 1; i < places.size(); i++) {
            places.set(i, Math.max(places.get(i), places.get(i - 1) + LABEL_STEP));
        }
        double limit = tube.foot();
        for (int i = places.size() - 1; i >= 0; i--) {
            places.set(i, Math.min(places.get(i), limit));
            limit = places.get(i) - LABEL_STEP;
        }
        return places;
    }

    private static void set(Pen pen, String words, Style style, double x, double baseline) {
        Text.of(words, style).draw(pen, x, baseline);
    }
}
