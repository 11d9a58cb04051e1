package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Row;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.quote.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Itemised lines, the kind named where it changes; figures stand under each other on the decimal point. */
final class ItemTable {
    private static final double WIDEST_UNIT = 60;
    private static final double WIDEST_KIND = 64;
    private static final double ROW = Type.TEXT.leading();

    private final List<Line> lines;
    private final PaperText text;
    private final Figures figures;
    private final int decimals;

    ItemTable(List<Line> lines, PaperText text) {
        this.lines = lines;
        this.text = text;
        this.figures = text.figures();
        this.decimals = lines.stream()
                .mapToInt(line -> Math.max(0, shown(line).length() - whole(line)))
                .max()
                .orElse(0);
    }

    Block block() {
        var rows = new ArrayList<Row>();
        var before = "";
        for (var line : lines) {
            var kind = line.kind().word();
            rows.add(row(line, kind.equals(before) ? "" : text.word("kinds", kind)));
            before = kind;
        }
        return new Grid(columns(), List.of(header()), rows, Grid.Kind.TABLE);
    }

    private Columns columns() {
        return new Columns(
                List.of(
                        Columns.fixed(widest(Line::id, Type.TINY_FIGURES, Label.LINE)),
                        Columns.fixed(kindWidth()),
                        Columns.share(1),
                        Columns.fixed(quantityWidth()),
                        Columns.fixed(Math.min(WIDEST_UNIT, widest(this::unit, Type.SMALL, Label.UNIT))),
                        Columns.fixed(widest(line -> figures.plain(line.unitPrice()), Type.FIGURES, Label.UNIT_PRICE)),
                        Columns.fixed(12),
                        Columns.fixed(widest(line -> figures.plain(line.net()), Type.FIGURES_STRONG, Label.AMOUNT))),
                8);
    }

    private double widest(Function<Line, String> cell, Style style, Label header) {
        double head = Text.of(text.say(header), Type.LABEL).width();
        return lines.stream()
                .mapToDouble(line -> Text.of(cell.apply(line), style).width())
                .reduce(head, Math::max);
    }

    private double kindWidth() {
        return lines.stream()
                .mapToDouble(line -> Text.of(text.word("kinds", line.kind().word()), Type.LABEL)
                        .width())
                .reduce(0, (a, b) -> Math.min(WIDEST_KIND, Math.max(a, b)));
    }

    private double quantityWidth() {
        double head = Text.of(text.say(Label.QUANTITY), Type.LABEL).width();
        int whole = lines.stream().mapToInt(this::whole).max().orElse(0);
        return Math.max(head, (whole + decimals) * figureWidth());
    }

    private static double figureWidth() {
        return Text.of("0", Type.FIGURES).width();
    }

    private Row header() {
        return Row.of(
                        head(Label.LINE, false),
                        Paragraph.of("", Type.LABEL),
                        head(Label.DESCRIPTION, false),
                        head(Label.QUANTITY, true),
                        head(Label.UNIT, false),
                        head(Label.UNIT_PRICE, true),
                        head(Label.TAXED_MARK, false),
                        head(Label.AMOUNT, true))
                .padded(3, 4)
                .ruled(Type.RULE);
    }

    private Block head(Label label, boolean right) {
        return right ? Paragraph.right(text.say(label), Type.LABEL) : Paragraph.of(text.say(label), Type.LABEL);
    }

    private Row row(Line line, String kind) {
        var mark = (line.taxable() ? text.say(Label.TAXED_MARK) : "")
                + (line.further() ? text.say(Label.FURTHER_MARK) : "");
        return Row.of(
                        Paragraph.of(line.id(), Type.TINY_FIGURES.leaded(ROW)),
                        Paragraph.of(kind, Type.LABEL.leaded(ROW)),
                        Paragraph.of(line.description(), Type.TEXT),
                        Paragraph.right(shown(line), Type.FIGURES).indented(missingDecimals(line) * figureWidth()),
                        Paragraph.of(unit(line), Type.SMALL.leaded(ROW)),
                        Paragraph.right(figures.plain(line.unitPrice()), Type.FIGURES),
                        Paragraph.of(mark, Type.SMALL_STRONG.leaded(ROW)),
                        Paragraph.right(figures.plain(line.net()), Type.FIGURES))
                .padded(2.5, 3)
                .ruled(Type.QUIET_RULE);
    }

    private String shown(Line line) {
        // A part of a quantity comes out of a product and carries noughts that say nothing.
        return line.quantity().scale() > 2 ? figures.shortest(line.quantity()) : figures.number(line.quantity());
    }

    private int whole(Line line) {
        int point = shown(line).lastIndexOf(figures.decimal());
        return point < 0 ? shown(line).length() : point;
    }

    private int missingDecimals(Line line) {
        return decimals - (shown(line).length() - whole(line));
    }

    private String unit(Line line) {
        return text.word("units", line.unit());
    }
}
