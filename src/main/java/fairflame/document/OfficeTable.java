package fairflame.document;

import fairflame.document.page.Block;
import fairflame.document.page.Columns;
import fairflame.document.page.Grid;
import fairflame.document.page.Paragraph;
import fairflame.document.page.Row;
import fairflame.document.page.Style;
import fairflame.document.page.Text;
import java.util.ArrayList;
import java.util.List;

/** A table of words and figures: figures stand right, in columns as wide as they need. */
final class OfficeTable {
    private static final double GAP = 10;

    private final List<Kind> kinds = new ArrayList<>();
    private final List<String> heads = new ArrayList<>();
    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> strong = new ArrayList<>();

    /** What a column holds. */
    enum Kind {
        /** Words that take what is left of the width. */
        WORDS,
        /** Short words, as wide as they need. */
        SHORT,
        FIGURES
    }

    OfficeTable column(Kind kind, String head) {
        kinds.add(kind);
        heads.add(head);
        return this;
    }

    OfficeTable row(String... cells) {
        return row(false, cells);
    }

    OfficeTable strongRow(String... cells) {
        return row(true, cells);
    }

    private OfficeTable row(boolean heavy, String... cells) {
        rows.add(List.of(cells));
        strong.add(heavy);
        return this;
    }

    Block block() {
        var columns = new ArrayList<Columns.Column>();
        for (int i = 0; i < kinds.size(); i++) {
            columns.add(kinds.get(i) == Kind.WORDS ? Columns.share(1) : Columns.fixed(widest(i)));
        }
        var set = new ArrayList<Row>();
        for (int i = 0; i < rows.size(); i++) {
            var row = set(rows.get(i), strong.get(i));
            // A sum never stands alone on a page: the row above it goes with it.
            set.add(i + 1 < rows.size() && strong.get(i + 1) ? row.clinging() : row);
        }
        return new Grid(new Columns(columns, GAP), List.of(head()), set, Grid.Kind.TABLE);
    }

    private double widest(int column) {
        var widest = Text.of(heads.get(column), Type.LABEL).width();
        for (int i = 0; i < rows.size(); i++) {
            var style = style(kinds.get(column), strong.get(i));
            widest = Math.max(widest, Text.of(rows.get(i).get(column), style).width());
        }
        return widest + 1;
    }

    private static Style style(Kind kind, boolean heavy) {
        if (kind == Kind.FIGURES) {
            return heavy ? Type.FIGURES_STRONG : Type.FIGURES;
        }
        return heavy ? Type.STRONG : Type.TEXT;
    }

    private Row head() {
        var cells = new ArrayList<Block>();
        for (int i = 0; i < kinds.size(); i++) {
            cells.add(cell(kinds.get(i), heads.get(i), Type.LABEL));
        }
        return Row.of(cells).padded(3, 4).ruled(Type.RULE);
    }

    private Row set(List<String> row, boolean heavy) {
        var cells = new ArrayList<Block>();
        for (int i = 0; i < kinds.size(); i++) {
            cells.add(cell(kinds.get(i), row.get(i), style(kinds.get(i), heavy)));
        }
        return Row.of(cells).padded(2.5, 3).ruled(heavy ? Type.RULE : Type.QUIET_RULE);
    }

    private static Block cell(Kind kind, String words, Style style) {
        return kind == Kind.FIGURES ? Paragraph.right(words, style) : Paragraph.of(words, style);
    }
}
