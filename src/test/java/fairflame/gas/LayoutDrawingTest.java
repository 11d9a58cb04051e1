package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.gas.Drawing.Anchor;
import fairflame.gas.Drawing.Ink;
import fairflame.gas.Drawing.Words;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class LayoutDrawingTest {
    private static Layout example() throws Exception {
        return new LayoutReader(Sites.TABLES).read(Files.readString(Path.of("docs/formats/layout.example.json")));
    }

    private static PlanChoices plans(Layout layout) {
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40);
        var rules = PlanRules.cautious(layout).raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(7));
        return LeastCostPlan.find(Sites.TABLES, layout, prices, rules);
    }

    private static List<Words> words(Drawing drawing) {
        return drawing.shapes().stream()
                .filter(Words.class::isInstance)
                .map(Words.class::cast)
                .toList();
    }

    private static List<String> texts(Drawing drawing) {
        return words(drawing).stream().map(Words::text).toList();
    }

    private static Stream<Drawing.Line> lines(Drawing drawing) {
        return drawing.shapes().stream().filter(Drawing.Line.class::isInstance).map(Drawing.Line.class::cast);
    }

    private static List<Drawing> manyDrawings() throws Exception {
        var drawings = new ArrayList<Drawing>();
        var example = example();
        drawings.add(LayoutDrawing.of(Sites.TABLES, example, "Before"));
        Stream.concat(plans(example).best().stream(), plans(example).alternatives().stream())
                .forEach(plan -> drawings.add(LayoutDrawing.beforeAndAfter(Sites.TABLES, example, plan)));
        for (int seed = 0; seed < 20; seed++) {
            drawings.add(LayoutDrawing.of(Sites.TABLES, new RandomSites(seed).broad(15, 60), "As it is"));
            drawings.add(LayoutDrawing.of(Sites.TABLES, new RandomSites(seed).tree(9, 60), "As it is"));
        }
        return drawings;
    }

    private record Area(double left, double top, double right, double bottom) {
        static Area of(Words words) {
            var left = switch (words.anchor()) {
                case START -> words.x();
                case MIDDLE -> words.x() - words.about() / 2;
                case END -> words.x() - words.about();
            };
            return new Area(
                    left, words.y() - 0.75 * words.size(), left + words.about(), words.y() + 0.2 * words.size());
        }

        boolean meets(Area other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    @Test
    void nothingIsClippedAndNoWordsLieOverOthers() throws Exception {
        for (var drawing : manyDrawings()) {
            var areas = words(drawing).stream().map(Area::of).toList();
            for (int i = 0; i < areas.size(); i++) {
                var area = areas.get(i);
                assertThat(area.left()).isGreaterThanOrEqualTo(0);
                assertThat(area.top()).isGreaterThanOrEqualTo(0);
                assertThat(area.right()).as(texts(drawing).get(i)).isLessThanOrEqualTo(drawing.width());
                assertThat(area.bottom()).isLessThanOrEqualTo(drawing.height());
                for (int j = 0; j < i; j++) {
                    assertThat(area.meets(areas.get(j)))
                            .as(
                                    "%s over %s",
                                    texts(drawing).get(i), texts(drawing).get(j))
                            .isFalse();
                }
            }
            lines(drawing).forEach(line -> {
                assertThat(Math.max(line.x1(), line.x2())).isLessThanOrEqualTo(drawing.width());
                assertThat(Math.max(line.y1(), line.y2())).isLessThanOrEqualTo(drawing.height());
            });
        }
    }

    @Test
    void everySegmentShowsSizeLengthFlowAndPressure() throws Exception {
        var texts = texts(LayoutDrawing.of(Sites.TABLES, example(), "Before"));
        assertThat(texts)
                .contains(
                        "Before",
                        "Saltgrass Lane 12, pool pad and house",
                        "1-1/4 in Schedule 40 steel",
                        "62 ft, 84.6 ft with fittings".replace("84.6", "85"),
                        "388 ft\u00B3/h",
                        "5.3 in w.c.",
                        "1/2 in type L copper",
                        "16 ft",
                        "too small: needs 1-1/2 in",
                        "pool heater",
                        "400,000 Btu/h, 388 ft\u00B3/h",
                        "gets 5.3 in w.c., needs 5.0 in w.c.",
                        "only just enough",
                        "Meter",
                        "rated 630 ft\u00B3/h",
                        "load 485 ft\u00B3/h");
    }

    @Test
    void whatIsTooSmallIsBrokenAndSaidAndWhatIsNewIsDoubleAndSaid() throws Exception {
        var layout = example();
        var plan = plans(layout).alternatives().stream()
                .filter(one -> one.kind() == Plan.Kind.LARGER_PIPE)
                .findFirst()
                .orElseThrow();
        var before = LayoutDrawing.of(Sites.TABLES, layout, "Before");
        // One more of each in the legend.
        assertEquals(
                4 + 1, lines(before).filter(line -> !line.dashes().isEmpty()).count());
        assertEquals(1, lines(before).filter(line -> line.ink() == Ink.COPPER).count());
        var after = LayoutDrawing.after(Sites.TABLES, layout, plan.after(), "After");
        assertEquals(1, lines(after).filter(line -> !line.dashes().isEmpty()).count());
        assertEquals(
                2 + 1, lines(after).filter(line -> line.ink() == Ink.COPPER).count());
        assertEquals(2 + 1, lines(after).filter(line -> line.ink() == Ink.PAPER).count());
        assertThat(texts(after)).contains("new, was 1 in", "new, was 1/2 in type L copper");
        assertThat(texts(after)).noneMatch(text -> text.startsWith("too small:"));
    }

    @Test
    void regulatorsAreDrawnWithTheirSettingAndNewOnesSayIt() throws Exception {
        var plan = plans(example()).best().orElseThrow();
        assertEquals(Plan.Kind.RAISED_PRESSURE, plan.kind());
        var after = LayoutDrawing.after(Sites.TABLES, example(), plan.after(), "After");
        assertEquals(2, texts(after).stream().filter("R"::equals).count());
        assertEquals(
                2,
                texts(after).stream().filter("new, set to 7.0 in w.c."::equals).count());
        assertThat(texts(after)).contains("2.00 psi", "1.95 psi");
        var same = LayoutDrawing.of(Sites.TABLES, plan.after(), "Now");
        assertEquals(
                2, texts(same).stream().filter("set to 7.0 in w.c."::equals).count());
    }

    @Test
    void verdictsHaveAShapeEach() {
        var layout = Sites.site()
                .pipe("a", "m", "x", "3/4", 20)
                .pipe("b", "x", "y", "1/2", 90)
                .appliance("near", "x", 100_000, "4inwc")
                .appliance("edge", "x", 20_000, "6.2inwc")
                .appliance("far", "y", 90_000, "5.5inwc")
                .build();
        var drawing = LayoutDrawing.of(Sites.TABLES, layout, "Now");
        var bars = drawing.shapes().stream()
                .filter(Drawing.Box.class::isInstance)
                .map(Drawing.Box.class::cast)
                .filter(box -> box.height() == 8 && box.stroke() == 0)
                .toList();
        assertEquals(
                1,
                bars.stream()
                        .filter(bar -> bar.fill() == Ink.MOSS && bar.width() == 28)
                        .count());
        assertEquals(
                1,
                bars.stream()
                        .filter(bar -> bar.fill() == Ink.AMBER && bar.width() == 14)
                        .count());
        assertEquals(
                2,
                bars.stream()
                        .filter(bar -> bar.fill() == Ink.OXIDE && bar.width() < 14)
                        .count());
        assertThat(texts(drawing)).contains("enough pressure", "only just enough", "pressure too low");
    }

    @Test
    void aMeterThatIsTooSmallSaysSo() throws Exception {
        var layout = example();
        var is = layout.source();
        var small = layout.from(
                new Source(is.kind(), is.node(), is.pressure(), is.firing(), Optional.of(GasFlow.parse("425cfh"))));
        assertThat(texts(LayoutDrawing.of(Sites.TABLES, small, "Now"))).contains("load 485 ft\u00B3/h, too much");
        var unknown = layout.from(
                new Source(Source.Kind.TANK_REGULATOR, is.node(), is.pressure(), is.firing(), Optional.empty()));
        assertThat(texts(LayoutDrawing.of(Sites.TABLES, unknown, "Now")))
                .contains("Tank regulator", "rating not known");
    }

    @Test
    void twoFiguresThatWouldLookAlikeGetASecondDecimal() {
        var layout = Sites.site()
                .pipe("a", "m", "x", "3/4", 80)
                .appliance("heater", "x", 150_000, "6.24inwc")
                .build();
        assertThat(texts(LayoutDrawing.of(Sites.TABLES, layout, "Now")))
                .anyMatch(text -> text.matches("gets 6\\.22 in w\\.c\\., needs 6\\.2 in w\\.c\\."));
    }

    @Test
    void pipingThatCannotBeSizedIsDrawnWithoutMarks() {
        var layout = Sites.site()
                .pipe("a", "m", "x", new Pipe(Material.CSST, "25"), 400, Fittings.none())
                .appliance("heater", "x", 100_000, "4inwc")
                .build();
        var texts = texts(LayoutDrawing.of(Sites.TABLES, layout, "Now"));
        assertThat(texts).contains("CSST of EHD 25").noneMatch(text -> text.startsWith("too small:"));
    }

    @Test
    void tubingThatIsTooSmallNamesItsEhd() {
        var layout = Sites.site()
                .pipe("a", "m", "x", new Pipe(Material.CSST, "19"), 55, Fittings.none())
                .appliance("heater", "x", 150_000, "4inwc")
                .build();
        assertThat(texts(LayoutDrawing.of(Sites.TABLES, layout, "Now"))).contains("too small: needs EHD 31");
    }

    @Test
    void longNamesAreShortenedAndStrangeOnesAreSafe() throws Exception {
        var layout = Sites.site()
                .pipe("a", "m", "x", "1", 10)
                .appliance("a <heater> & \"more\" of a very long name", "x", 50_000, "4inwc")
                .build();
        var drawing = LayoutDrawing.of(Sites.TABLES, layout, "Now");
        assertThat(texts(drawing)).contains("a <heater> & \"more\" of ...");
        var svg = SvgDrawing.of(drawing);
        var document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        var text = document.getElementsByTagName("text");
        var found = new ArrayList<String>();
        for (int i = 0; i < text.getLength(); i++) {
            found.add(text.item(i).getTextContent());
        }
        assertEquals(texts(drawing), found);
        assertEquals(
                "Now: gas piping of test site",
                document.getElementsByTagName("title").item(0).getTextContent());
    }

    @Test
    void theSvgHoldsEveryShapeInTheInksOfTheHouse() throws Exception {
        var drawing = LayoutDrawing.beforeAndAfter(
                Sites.TABLES, example(), plans(example()).best().orElseThrow());
        var svg = SvgDrawing.of(drawing);
        assertThat(svg)
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .contains("font-family=\"'Atkinson Hyperlegible Next', sans-serif\"")
                .contains("stroke=\"#9B1C2E\" stroke-width=\"4.5\" stroke-dasharray=\"10 5\"")
                .contains("font-weight=\"700\" text-anchor=\"end\" fill=\"#0E5E66\"");
        var document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        var count = document.getElementsByTagName("line").getLength()
                + document.getElementsByTagName("circle").getLength()
                + document.getElementsByTagName("text").getLength()
                + document.getElementsByTagName("rect").getLength();
        // One more rectangle for the paper.
        assertEquals(drawing.shapes().size() + 1, count);
        assertEquals(
                svg,
                SvgDrawing.of(LayoutDrawing.beforeAndAfter(
                        Sites.TABLES, example(), plans(example()).best().orElseThrow())));
    }

    @Test
    void theSecondDrawingStandsBelowTheFirst() throws Exception {
        var plan = plans(example()).best().orElseThrow();
        var above = LayoutDrawing.of(Sites.TABLES, example(), "Before");
        var both = LayoutDrawing.beforeAndAfter(Sites.TABLES, example(), plan);
        var heading = words(both).stream()
                .filter(text -> text.text().startsWith("After"))
                .findFirst()
                .orElseThrow();
        assertEquals("After: higher pressure with line regulators", heading.text());
        assertEquals(above.height() + 30, heading.y());
        assertEquals(Anchor.START, heading.anchor());
        assertThat(both.height()).isGreaterThan(above.height() * 1.9);
        var discs =
                both.shapes().stream().filter(Drawing.Disc.class::isInstance).map(Drawing.Disc.class::cast);
        assertThat(discs.filter(disc -> disc.y() > above.height())).isNotEmpty();
    }

    @Test
    void aRunOfThousandsOfPiecesIsDrawn() {
        var site = Sites.site();
        for (int i = 0; i < 3000; i++) {
            site.pipe("s" + i, i == 0 ? "m" : "n" + (i - 1), "n" + i, "4", 1);
        }
        site.appliance("heater", "n2999", 100_000, "4inwc");
        assertThat(LayoutDrawing.of(Sites.TABLES, site.build(), "Long").shapes())
                .hasSizeGreaterThan(9000);
    }
}
