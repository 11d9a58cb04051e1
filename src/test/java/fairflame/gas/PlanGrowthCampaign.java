package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.quantity.Pressure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Measures how long a plan with all its alternatives takes as layouts grow. Run by itself, on a machine that does nothing
 * else:
 *
 * <pre>mvn test -Dtests.left.out=none -Dtest=PlanGrowthCampaign -Dgolden.write=true</pre>
 *
 * <p>It prints the table of docs/gas-methods.md and, asked to, writes its picture.
 */
@Tag("campaign")
class PlanGrowthCampaign {
    private static final int[] SIZES = {12, 25, 50, 100, 200, 350, 500};
    private static final int REPEATS = 5;

    private record Point(int segments, double middle, double slowest, long states) {}

    @Test
    void aPlanIsReadyWhileOneWaits() throws IOException {
        warm();
        var broad = points(size -> new RandomSites(size + 1).broad(size, 12), "broad trees");
        var header = points(size -> new RandomSites(1).header(size), "headers with branches");
        var deep = points(size -> new RandomSites(size + 3).light(size), "deep trees");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(Path.of("docs/plan-growth.svg"), picture(broad, header, deep));
        }
        // The promise: 12 segments in under 50 ms, 500 in under 1 s.
        for (var points : List.of(broad, header, deep)) {
            assertThat(points.get(0).middle()).isLessThan(50);
            assertThat(points.get(SIZES.length - 1).middle()).isLessThan(1000);
        }
    }

    private static void warm() {
        for (int seed = 0; seed < 60; seed++) {
            find(new RandomSites(seed).broad(20, 30));
        }
    }

    private static PlanChoices find(Layout layout) {
        var rules = PlanRules.cautious(layout).raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(7));
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.COPPER_L);
        return LeastCostPlan.find(Sites.TABLES, layout, prices, rules);
    }

    private static List<Point> points(IntFunction<Layout> layouts, String kind) {
        var points = new ArrayList<Point>();
        for (var size : SIZES) {
            var times = new ArrayList<Double>();
            long states = 0;
            for (int i = 0; i < REPEATS; i++) {
                var layout = layouts.apply(size);
                var began = System.nanoTime();
                states = find(layout).proof().states();
                times.add((System.nanoTime() - began) / 1e6);
            }
            times.sort(null);
            points.add(new Point(size, times.get(REPEATS / 2), times.get(REPEATS - 1), states));
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %d | %.0f ms | %.0f ms | %,d |%n",
                    kind,
                    size,
                    times.get(REPEATS / 2),
                    times.get(REPEATS - 1),
                    states);
        }
        return points;
    }

    /** Time over segments, both axes logarithmic, drawn with the shapes that layouts are drawn with. */
    private static String picture(List<Point> broad, List<Point> header, List<Point> deep) {
        var shapes = new ArrayList<Drawing.Shape>();
        text(shapes, 24, 30, 16, true, Drawing.Ink.INK, "A plan with its alternatives: time over size");
        text(
                shapes,
                24,
                48,
                11,
                false,
                Drawing.Ink.SLATE,
                "milliseconds, median of five, over segments; both scales logarithmic");
        for (var ms : new double[] {1, 10, 100, 1000}) {
            shapes.add(new Drawing.Line(64, y(ms), 600, y(ms), Drawing.Ink.RULE, 1, List.of()));
            shapes.add(new Drawing.Words(
                    56,
                    y(ms) + 4,
                    Drawing.Anchor.END,
                    11,
                    false,
                    Drawing.Ink.SLATE,
                    String.format(Locale.ROOT, "%,.0f", ms)));
        }
        Arrays.stream(SIZES)
                .forEach(size -> shapes.add(new Drawing.Words(
                        x(size), 352, Drawing.Anchor.MIDDLE, 11, false, Drawing.Ink.SLATE, String.valueOf(size))));
        curve(shapes, broad, Drawing.Ink.LAGOON, List.of(), "broad trees");
        curve(shapes, header, Drawing.Ink.COPPER, List.of(7.0, 4.0), "headers");
        curve(shapes, deep, Drawing.Ink.SLATE, List.of(2.0, 4.0), "deep trees");
        return SvgDrawing.of(new Drawing("Time of a plan over the number of segments", 700, 372, shapes));
    }

    private static void curve(
            List<Drawing.Shape> shapes, List<Point> points, Drawing.Ink ink, List<Double> dashes, String name) {
        for (int i = 1; i < points.size(); i++) {
            var from = points.get(i - 1);
            var to = points.get(i);
            shapes.add(new Drawing.Line(
                    x(from.segments()), y(from.middle()), x(to.segments()), y(to.middle()), ink, 2.5, dashes));
        }
        points.forEach(point ->
                shapes.add(new Drawing.Disc(x(point.segments()), y(point.middle()), 4, Drawing.Ink.PAPER, ink, 2)));
        var last = points.get(points.size() - 1);
        text(shapes, x(last.segments()) + 10, y(last.middle()) + 4, 12, true, ink, name);
    }

    private static void text(
            List<Drawing.Shape> shapes, double x, double y, double size, boolean bold, Drawing.Ink ink, String text) {
        shapes.add(new Drawing.Words(x, y, Drawing.Anchor.START, size, bold, ink, text));
    }

    private static double x(double segments) {
        return 84 + 490 * Math.log(segments / 12) / Math.log(500.0 / 12);
    }

    private static double y(double milliseconds) {
        return 330 - 84 * Math.log10(Math.max(1, milliseconds));
    }
}
