package fairflame.document.sheet;

import fairflame.Refusal;
import fairflame.document.sheet.Axis.Span;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.NameIdentifier;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.AreaPtg;
import org.apache.poi.ss.formula.ptg.AreaPtgBase;
import org.apache.poi.ss.formula.ptg.IntPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.ptg.RefPtg;
import org.apache.poi.ss.formula.ptg.RefPtgBase;
import org.apache.poi.ss.formula.ptg.StringPtg;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;

/**
 * Writes a formula of a template anew for the place it comes to stand at. A reference to a repeated row means all that
 * the row became, or, from within the same repetition, the one being written; a reference to what was left out reads 0.
 */
final class FormulaMove {
    private final XSSFEvaluationWorkbook book;
    private final Grid here;
    private final Function<String, List<Grid>> sheets;
    private final Map<String, Integer> at;
    private final Function<String, Value> values;

    /** Where the cells of a template's sheet stand in one written sheet. */
    record Grid(String name, String group, Axis rows, Axis columns) {}

    /**
     * @param sheets what became of each sheet of the template
     * @param at members being written, by group
     * @param values for placeholders in the formula's own texts
     */
    FormulaMove(
            XSSFEvaluationWorkbook book,
            Grid here,
            Function<String, List<Grid>> sheets,
            Map<String, Integer> at,
            Function<String, Value> values) {
        this.book = book;
        this.here = here;
        this.sheets = sheets;
        this.at = at;
        this.values = values;
    }

    String moved(List<Ptg> formula) {
        return FormulaRenderer.toFormulaString(
                book, formula.stream().map(this::moved).toArray(Ptg[]::new));
    }

    private Ptg moved(Ptg token) {
        if (token instanceof Ref3DPxg ref) {
            return other(ref.getSheetName())
                    .<Ptg>map(
                            grid -> cell(ref, grid).map(area -> far(grid, area)).orElseGet(FormulaMove::nothing))
                    .orElse(token);
        }
        if (token instanceof Area3DPxg area) {
            return other(area.getSheetName())
                    .<Ptg>map(grid ->
                            range(area, grid).map(moved -> far(grid, moved)).orElseGet(FormulaMove::nothing))
                    .orElse(token);
        }
        if (token instanceof RefPtgBase ref) {
            return cell(ref, here).map(FormulaMove::near).orElseGet(FormulaMove::nothing);
        }
        if (token instanceof AreaPtgBase area) {
            return range(area, here).<Ptg>map(AreaPtg::new).orElseGet(FormulaMove::nothing);
        }
        if (token instanceof StringPtg text) {
            return new StringPtg(CellText.parse(text.getValue()).filled(values));
        }
        return token;
    }

    // One cell stays one cell in the formula; only a repeated one becomes a range.
    private static Ptg near(AreaReference area) {
        return single(area) ? new RefPtg(area.getFirstCell()) : new AreaPtg(area);
    }

    private static Ptg far(Grid grid, AreaReference area) {
        var sheet = new SheetIdentifier(null, new NameIdentifier(grid.name(), true));
        return single(area) ? new Ref3DPxg(sheet, area.getFirstCell()) : new Area3DPxg(sheet, area);
    }

    private static boolean single(AreaReference area) {
        return area.getFirstCell().getRow() == area.getLastCell().getRow()
                && area.getFirstCell().getCol() == area.getLastCell().getCol();
    }

    private static Ptg nothing() {
        return new IntPtg(0);
    }

    private Optional<Grid> other(String sheet) {
        var grids = sheets.apply(sheet);
        if (grids.size() <= 1) {
            return grids.stream().findFirst();
        }
        var member = at.get(grids.get(0).group());
        if (member == null) {
            throw Refusal.notAllowed(
                    "reference to sheet",
                    sheet,
                    "a row for each " + grids.get(0).group() + ", because the sheet is written once for each");
        }
        return Optional.of(grids.get(member));
    }

    private Optional<AreaReference> cell(RefPtgBase ref, Grid grid) {
        var rows = grid.rows().span(ref.getRow(), at);
        var columns = grid.columns().span(ref.getColumn(), at);
        return joined(
                rows, columns, !ref.isRowRelative(), !ref.isColRelative(), !ref.isRowRelative(), !ref.isColRelative());
    }

    // A fixed end ($) of a range always means the end of the repetition, so that running and whole sums can be told.
    private Optional<AreaReference> range(AreaPtgBase area, Grid grid) {
        var none = Map.<String, Integer>of();
        var rows = grid.rows()
                .span(
                        area.getFirstRow(),
                        area.getLastRow(),
                        area.isFirstRowRelative() ? at : none,
                        area.isLastRowRelative() ? at : none);
        var columns = grid.columns()
                .span(
                        area.getFirstColumn(),
                        area.getLastColumn(),
                        area.isFirstColRelative() ? at : none,
                        area.isLastColRelative() ? at : none);
        return joined(
                rows,
                columns,
                !area.isFirstRowRelative(),
                !area.isFirstColRelative(),
                !area.isLastRowRelative(),
                !area.isLastColRelative());
    }

    private static Optional<AreaReference> joined(
            Optional<Span> rows, Optional<Span> columns, boolean r1, boolean c1, boolean r2, boolean c2) {
        return rows.flatMap(row -> columns.map(column -> new AreaReference(
                new CellReference(row.first(), column.first(), r1, c1),
                new CellReference(row.last(), column.last(), r2, c2),
                SpreadsheetVersion.EXCEL2007)));
    }
}
