package fairflame.document;

import fairflame.document.page.Align;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.RuleLine;
import fairflame.document.page.Running;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import fairflame.document.page.Text;
import java.util.List;

/**
 * Head and foot of every page.
 *
 * @param seller at the head of every page but the first, which has the letterhead
 * @param customer beside it
 * @param name number, revision and short seal, at the foot
 */
record RunningLines(String seller, String customer, String name, PaperText text) implements Running {
    private static final double HALF = 235;

    @Override
    public Block head(int page, int pages) {
        if (page == 1) {
            return new Stack(List.of());
        }
        return Stack.of(
                Grid.beside(
                        Columns.equal(2, 16),
                        Paragraph.of(Text.of(seller, Type.LABEL).fitted(HALF)),
                        Paragraph.of(Text.of(customer, Type.QUIET).fitted(HALF)).aligned(Align.RIGHT)),
                new Space(14));
    }

    @Override
    public Block foot(int page, int pages) {
        var count = text.say(Label.PAGE_OF, Integer.toString(page), Integer.toString(pages));
        return Stack.of(
                new Space(8),
                new RuleLine(Type.QUIET_RULE),
                new Space(4),
                Grid.beside(
                        new Columns(List.of(Columns.share(1), Columns.fixed(90)), 12),
                        Paragraph.of(Text.of(name, Type.QUIET).fitted(380)),
                        Paragraph.right(count, Type.QUIET)));
    }
}
