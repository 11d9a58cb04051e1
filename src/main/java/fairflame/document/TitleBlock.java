package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Role;
import fairflame.document.page.Row;
import fairflame.document.page.Space;
import fairflame.document.page.Stack;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The one strong heading of a paper, with its numbers and dates beside it. */
final class TitleBlock {
    private static final double GAP = 16;
    // Two of the three columns that stand below, and the gap between them.
    private static final Columns.Column TITLE = new Columns.Column(GAP, 2);

    private final String title;
    private final String subtitle;
    private final Map<String, String> facts = new LinkedHashMap<>();

    TitleBlock(String title, String subtitle) {
        this.title = title;
        this.subtitle = subtitle;
    }

    TitleBlock with(String label, String value) {
        facts.put(label, value);
        return this;
    }

    Block block() {
        var rows = new ArrayList<Row>();
        facts.forEach((label, value) ->
                rows.add(Row.of(Paragraph.of(label, Type.QUIET), Paragraph.of(value, Type.SMALL_STRONG))));
        var table = new Grid(
                new Columns(List.of(Columns.fixed(54), Columns.share(1)), 8), List.of(), rows, Grid.Kind.LAYOUT);
        var words = Stack.of(Paragraph.heading(Role.HEADING_1, title, Type.TITLE), Paragraph.of(subtitle, Type.TEXT));
        return Stack.of(Grid.beside(new Columns(List.of(TITLE, Columns.share(1)), GAP), words, table), new Space(12));
    }
}
