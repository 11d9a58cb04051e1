package fairflame.document;

import fairflame.document.page.Align;
import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Row;
import fairflame.document.page.Stack;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import fairflame.document.page.Together;
import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/** Subtotal, discount, tax by layer and total, with what the marks in the lines mean beside them. */
final class TotalsBlock {
    private static final double FIGURES = 92;

    private final PaperText text;
    private final List<Row> rows = new ArrayList<>();

    TotalsBlock(Totals totals, PaperText text) {
        this.text = text;
        var figures = text.figures();
        add(text.say(Label.SUBTOTAL), totals.subtotal());
        if (!totals.discount().isZero()) {
            add(text.say(Label.DISCOUNT), totals.discount().negated());
        }
        for (var tax : totals.taxes()) {
            var rate = figures.percent(tax.rate());
            add(text.say(Label.TAX_ON, tax.name(), rate, figures.money(tax.base())), tax.amount());
        }
        if (totals.taxes().isEmpty()) {
            add(text.say(Label.NO_TAX), totals.tax());
        }
        last(row -> row.ruled(Type.RULE));
        strong(text.say(Label.TOTAL), totals.total());
    }

    /** A further amount under the total. */
    TotalsBlock add(String label, Money amount) {
        rows.add(row(label, text.figures().plain(amount), Type.TEXT, Type.FIGURES));
        return this;
    }

    /** The amount that counts. */
    TotalsBlock strong(String label, Money amount) {
        rows.add(row(label, text.figures().money(amount), Type.HEADING.sized(12), Type.TOTAL)
                .padded(4, 3));
        return this;
    }

    TotalsBlock rule() {
        last(row -> row.ruled(Type.RULE));
        return this;
    }

    private void last(java.util.function.UnaryOperator<Row> change) {
        rows.set(rows.size() - 1, change.apply(rows.get(rows.size() - 1)));
    }

    private static Row row(String label, String amount, Style words, Style figures) {
        return Row.of(Paragraph.of(Text.of(label, words)).aligned(Align.RIGHT), Paragraph.right(amount, figures))
                .padded(2, 2.5);
    }

    /** The totals at the right, what the marks of the lines mean at the left. */
    Block block(List<Line> lines) {
        return block(lines, List.of());
    }

    /** The totals at the right; at the left the legend and whatever else belongs beside them. */
    Block block(List<Line> lines, List<Block> beside) {
        var left = legend(lines);
        left.addAll(beside);
        var columns = new Columns(List.of(Columns.share(1), Columns.fixed(FIGURES)), 10);
        var table = new Grid(columns, List.of(), rows, Grid.Kind.TABLE);
        var halves = new Columns(List.of(Columns.share(2), Columns.share(3)), 16);
        return new Together(Grid.beside(halves, new Stack(left), table));
    }

    private List<Block> legend(List<Line> lines) {
        var legend = new ArrayList<Block>();
        boolean taxed = lines.stream().anyMatch(Line::taxable);
        var words = taxed ? Label.TAXED_LEGEND : Label.UNTAXED_LEGEND;
        legend.add(Paragraph.of(text.say(words), Type.QUIET));
        if (lines.stream().anyMatch(Line::further)) {
            legend.add(Paragraph.of(text.say(Label.FURTHER_LEGEND), Type.QUIET));
        }
        return legend;
    }
}
