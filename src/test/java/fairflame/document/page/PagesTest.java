package fairflame.document.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How blocks break over pages. */
class PagesTest {
    private static final Style STYLE = new Style(Face.REGULAR, 10, 10, Ink.INK);
    private static final double WIDTH = 300;
    private static final double PAGE = 100;

    /** Writes down what is drawn and where, instead of drawing it. */
    private static final class Notebook implements Pen {
        private final List<String> said = new ArrayList<>();
        private double lowest;

        @Override
        public void words(String words, Style style, double x, double baseline) {
            said.add(words);
            lowest = Math.max(lowest, baseline);
        }

        @Override
        public void path(List<Point> points, Stroke stroke) {}

        @Override
        public void line(Point from, Point to, Stroke stroke) {}

        @Override
        public void area(List<Point> points, Ink ink) {}

        @Override
        public void rectangle(Point corner, double width, double height, Ink ink) {}

        @Override
        public void frame(Point corner, double width, double height, Stroke stroke) {}

        @Override
        public void photo(byte[] jpeg, Place place, double height) {}

        @Override
        public void entry(Entry entry, Point corner, double width, double height) {}

        @Override
        public void disc(Point centre, double radius, Ink ink) {}

        @Override
        public void tagged(Role role, Runnable content) {
            content.run();
        }

        @Override
        public void group(Role role, Runnable content) {
            content.run();
        }

        @Override
        public void picture(String told, Runnable content) {
            content.run();
        }

        @Override
        public void decor(Runnable content) {
            content.run();
        }

        @Override
        public void standsFor(String character, Runnable shape) {
            shape.run();
        }
    }

    private static List<List<String>> pages(Block body) {
        var pages = new ArrayList<List<String>>();
        Optional<Block> rest = Optional.of(body);
        while (rest.isPresent()) {
            var split = rest.get().split(WIDTH, new Room(PAGE, true));
            assertThat(split.head()).as("a page is never empty").isPresent();
            var notebook = new Notebook();
            split.head().get().draw(notebook, new Place(0, 0, WIDTH));
            assertThat(notebook.lowest).as("foot of a page").isLessThanOrEqualTo(PAGE);
            pages.add(notebook.said);
            rest = split.rest();
        }
        return pages;
    }

    private static Block words(String words) {
        return Paragraph.of(words, STYLE);
    }

    private static Block lines(String prefix, int count) {
        var words = new StringBuilder();
        for (int i = 1; i <= count; i++) {
            words.append(i > 1 ? "\n" : "").append(prefix).append(i);
        }
        return words(words.toString());
    }

    @Test
    void aHeadingNeverStandsAloneAtTheFoot() {
        var heading = Paragraph.heading(Role.HEADING_2, "heading", STYLE);
        var body = Stack.of(lines("a", 8), heading, new Space(5), lines("b", 2));
        var pages = pages(body);
        assertThat(pages).hasSize(2);
        assertThat(pages.get(1)).containsExactly("heading", "b1", "b2");
    }

    @Test
    void leavesNoSingleLineOfAParagraphBehind() {
        var pages = pages(Stack.of(lines("a", 8), lines("b", 3)));
        assertThat(pages.get(1)).containsExactly("b1", "b2", "b3");
        pages = pages(Stack.of(lines("a", 7), lines("b", 4)));
        assertThat(pages.get(1)).containsExactly("b3", "b4");
    }

    @Test
    void spaceVanishesAtTheTopOfAPage() {
        var body = Stack.of(lines("a", 10), new Space(30), lines("b", 10));
        assertThat(pages(body)).hasSize(2);
    }

    @Test
    void keepsTogetherWhatFitsOnAPageAndBreaksWhatDoesNot() {
        var pages = pages(Stack.of(lines("a", 4), new Together(lines("b", 9))));
        assertThat(pages.get(1)).hasSize(9);
        assertThat(pages(new Together(lines("c", 25)))).hasSize(3);
    }

    @Test
    void aTableRepeatsItsHeaderOnEachPage() {
        var rows = new ArrayList<Row>();
        for (int i = 1; i <= 20; i++) {
            rows.add(Row.of(words("row" + i), words("x")));
        }
        var table = new Grid(Columns.equal(2, 10), List.of(Row.of(words("head"), words("er"))), rows, Grid.Kind.TABLE);
        var pages = pages(table);
        assertThat(pages).hasSize(3);
        assertThat(pages).allMatch(page -> page.get(0).equals("head"));
        assertThat(pages.get(1)).contains("row10").doesNotContain("row9");
    }

    @Test
    void aRowTallerThanAPageIsBrokenInside() {
        var table = new Grid(
                Columns.equal(2, 10),
                List.of(Row.of(words("head"))),
                List.of(Row.of(words("short")), Row.of(lines("long", 15), words("beside"))),
                Grid.Kind.TABLE);
        var said = pages(table).stream().flatMap(List::stream).toList();
        assertThat(said).contains("long1", "long15", "beside");
    }

    @Test
    void aRowThatClingsIsNotLeftAtTheFoot() {
        var rows = new ArrayList<Row>();
        for (int i = 1; i <= 9; i++) {
            rows.add(Row.of(words("row" + i)));
        }
        rows.add(Row.of(words("group")).clinging());
        rows.add(Row.of(words("member")));
        var pages = pages(new Grid(Columns.equal(1, 0), List.of(), rows, Grid.Kind.LAYOUT));
        assertThat(pages.get(1)).containsExactly("group", "member");
    }

    @Test
    void boxesBreakAndStayBoxes() {
        var box = Framed.of(lines("a", 30), 10, Ink.WHITE, Stroke.solid(Ink.INK, 1));
        var pages = pages(box);
        assertThat(pages).hasSize(4);
        assertThat(pages.get(0)).hasSize(8);
    }

    @Test
    void whateverIsStackedIsDrawnOnceInOrderAndInsideThePage() {
        for (long seed = 0; seed < 300; seed++) {
            var random = new Random(seed);
            var expected = new ArrayList<String>();
            var body = new Stack(blocks(random, 3, expected));
            var said = pages(body).stream().flatMap(List::stream).toList();
            assertThat(said).as("seed %d", seed).containsExactlyElementsOf(expected);
        }
    }

    private static List<Block> blocks(Random random, int depth, List<String> expected) {
        var blocks = new ArrayList<Block>();
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            int kind = depth == 0 ? random.nextInt(3) : random.nextInt(6);
            blocks.add(
                    switch (kind) {
                        case 0, 1 -> paragraph(random, expected);
                        case 2 -> heading(expected);
                        case 3 -> new Together(new Stack(blocks(random, depth - 1, expected)));
                        case 4 ->
                            Framed.of(
                                    new Stack(blocks(random, depth - 1, expected)),
                                    5,
                                    Ink.WHITE,
                                    Stroke.solid(Ink.INK, 1));
                        default -> Stack.of(new Space(random.nextInt(20)), paragraph(random, expected));
                    });
        }
        return blocks;
    }

    private static Block paragraph(Random random, List<String> expected) {
        var words = new ArrayList<String>();
        for (int i = 0; i < 1 + random.nextInt(14); i++) {
            words.add("line" + expected.size());
            expected.add(words.get(words.size() - 1));
        }
        return words(String.join("\n", words));
    }

    private static Block heading(List<String> expected) {
        expected.add("heading" + expected.size());
        return Paragraph.heading(Role.HEADING_3, expected.get(expected.size() - 1), STYLE);
    }

    @Test
    void whatFitsOnNoPageIsRefused() {
        var tall = new Space(5000);
        var file = new PaperFile(
                new PaperInfo("t", "a", "en", java.time.LocalDate.of(2026, 1, 2)), PageFormat.A4, new Running() {
                    @Override
                    public Block head(int page, int pages) {
                        return new Space(0);
                    }

                    @Override
                    public Block foot(int page, int pages) {
                        return new Space(0);
                    }
                });
        assertThatThrownBy(() -> file.write(tall)).isInstanceOf(Refusal.NotAllowed.class);
    }
}
