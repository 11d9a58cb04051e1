package fairflame.document;

import fairflame.document.page.Align;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Ink;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Picture;
import fairflame.document.page.RuleLine;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Stroke;
import fairflame.quote.Party;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Who the paper comes from, over the first page. */
final class Letterhead {
    private static final double MARK = 30;

    private Letterhead() {}

    static Block of(Party seller, String licence, Company company) {
        var name = new ArrayList<Block>();
        name.add(Paragraph.of(seller.name(), Type.NAME));
        if (!company.tagline().isBlank()) {
            name.add(Paragraph.of(company.tagline(), Type.QUIET));
        }
        boolean marked = company.mark() == Company.Mark.FLAME_OVER_WATER;
        Block left = marked
                ? Grid.beside(
                        new Columns(List.of(Columns.fixed(MARK), Columns.share(1)), 9),
                        new Picture(new MarkDrawing()),
                        new Stack(name))
                : new Stack(name);
        var halves = new Columns(List.of(Columns.share(1), Columns.share(1)), 16);
        return Stack.of(
                Grid.beside(halves, left, address(seller, licence, company)),
                new Space(8),
                new RuleLine(Stroke.solid(Ink.INK, 1.6)));
    }

    private static Block address(Party seller, String licence, Company company) {
        var lines = new ArrayList<Block>();
        lines.add(right(String.join(", ", seller.address())));
        lines.add(right(seller.phone() + "  \u00B7  " + seller.email()));
        Stream.of(licence, company.insurance()).filter(line -> !line.isBlank()).forEach(line -> lines.add(right(line)));
        return new Stack(lines);
    }

    private static Block right(String words) {
        return Paragraph.of(words, Type.QUIET).aligned(Align.RIGHT);
    }
}
