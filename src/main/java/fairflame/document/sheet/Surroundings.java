package fairflame.document.sheet;

import fairflame.document.sheet.Axis.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.HeaderFooter;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * What stands around the cells of a sheet and has to follow them: merged cells, pictures, coloured ranges, frozen rows,
 * what is printed.
 */
final class Surroundings {
    private static final Map<String, Integer> NO_MEMBER = Map.of();

    private final TemplateSheet template;
    private final FormulaMove.Grid grid;
    private final XSSFSheet sheet;

    Surroundings(TemplateSheet template, FormulaMove.Grid grid, XSSFSheet sheet) {
        this.template = template;
        this.grid = grid;
        this.sheet = sheet;
    }

    /** Takes cells, remarks and ranges away; the sheet keeps its widths, pictures and page. */
    static void clear(XSSFSheet sheet) {
        while (sheet.getNumMergedRegions() > 0) {
            sheet.removeMergedRegion(0);
        }
        for (int i = sheet.getLastRowNum(); i >= 0; i--) {
            var row = sheet.getRow(i);
            if (row != null) {
                sheet.removeRow(row);
            }
        }
        var data = sheet.getCTWorksheet();
        // Remarks, choices of values and filters serve whoever edits the template, not who reads the paper.
        if (data.isSetLegacyDrawing()) {
            data.unsetLegacyDrawing();
        }
        if (data.isSetDataValidations()) {
            data.unsetDataValidations();
        }
        if (data.isSetAutoFilter()) {
            data.unsetAutoFilter();
        }
        if (data.isSetHyperlinks()) {
            data.unsetHyperlinks();
        }
    }

    /** @param words fills placeholders of page header and footer */
    void place(UnaryOperator<String> words) {
        template.merged().forEach(this::merge);
        pictures();
        colours();
        breaks();
        var pane = sheet.getPaneInformation();
        if (pane != null && pane.isFreezePane()) {
            sheet.createFreezePane(
                    grid.columns().first(pane.getVerticalSplitPosition()),
                    grid.rows().first(pane.getHorizontalSplitPosition()));
        }
        template.repeated()
                .flatMap(rows -> grid.rows().span(rows.getFirstRow(), rows.getLastRow(), NO_MEMBER, NO_MEMBER))
                .ifPresent(rows -> sheet.setRepeatingRows(new CellRangeAddress(rows.first(), rows.last(), -1, -1)));
        template.printed().flatMap(this::moved).ifPresent(area -> {
            var book = sheet.getWorkbook();
            book.setPrintArea(
                    book.getSheetIndex(sheet),
                    area.getFirstColumn(),
                    area.getLastColumn(),
                    area.getFirstRow(),
                    area.getLastRow());
        });
        List.of(sheet.getHeader(), sheet.getFooter()).forEach(part -> fill(part, words));
    }

    private static void fill(HeaderFooter part, UnaryOperator<String> words) {
        if (!part.getLeft().isEmpty()) {
            part.setLeft(words.apply(part.getLeft()));
        }
        if (!part.getCenter().isEmpty()) {
            part.setCenter(words.apply(part.getCenter()));
        }
        if (!part.getRight().isEmpty()) {
            part.setRight(words.apply(part.getRight()));
        }
    }

    /** Where a range comes to stand; empty when all of it was left out. */
    private Optional<CellRangeAddress> moved(CellRangeAddress area) {
        var rows = grid.rows().span(area.getFirstRow(), area.getLastRow(), NO_MEMBER, NO_MEMBER);
        var columns = grid.columns().span(area.getFirstColumn(), area.getLastColumn(), NO_MEMBER, NO_MEMBER);
        return rows.flatMap(row ->
                columns.map(column -> new CellRangeAddress(row.first(), row.last(), column.first(), column.last())));
    }

    /** Cells merged in one repeated row are merged in each of them. */
    private void merge(CellRangeAddress area) {
        if (area.getFirstRow() != area.getLastRow()) {
            moved(area).ifPresent(this::merged);
            return;
        }
        int row = area.getFirstRow();
        var columns = grid.columns().span(area.getFirstColumn(), area.getLastColumn(), NO_MEMBER, NO_MEMBER);
        columns.ifPresent(span -> IntStream.range(0, grid.rows().count(row))
                .map(i -> grid.rows().first(row) + i)
                .forEach(at -> merged(new CellRangeAddress(at, at, span.first(), span.last()))));
    }

    private void merged(CellRangeAddress area) {
        if (area.getNumberOfCells() > 1) {
            sheet.addMergedRegion(area);
        }
    }

    private void pictures() {
        var drawing = sheet.getDrawingPatriarch();
        if (drawing == null) {
            return;
        }
        for (var shape : drawing.getShapes()) {
            if (shape.getAnchor() instanceof XSSFClientAnchor anchor && anchor.getFrom() != null) {
                int row = grid.rows().first(anchor.getRow1());
                int column = grid.columns().first(anchor.getCol1());
                int tall = anchor.getRow2() - anchor.getRow1();
                int broad = anchor.getCol2() - anchor.getCol1();
                anchor.setRow1(row);
                anchor.setCol1(column);
                if (anchor.getTo() != null) {
                    anchor.setRow2(row + tall);
                    anchor.setCol2(column + broad);
                }
            }
        }
    }

    private void colours() {
        var formats = sheet.getSheetConditionalFormatting();
        for (int i = formats.getNumConditionalFormattings() - 1; i >= 0; i--) {
            var ranges = new ArrayList<CellRangeAddress>();
            for (var range : formats.getConditionalFormattingAt(i).getFormattingRanges()) {
                moved(range).ifPresent(ranges::add);
            }
            if (ranges.isEmpty()) {
                formats.removeConditionalFormatting(i);
            } else {
                formats.getConditionalFormattingAt(i).setFormattingRanges(ranges.toArray(new CellRangeAddress[0]));
            }
        }
    }

    private void breaks() {
        for (int row : sheet.getRowBreaks()) {
            sheet.removeRowBreak(row);
            grid.rows().span(row, NO_MEMBER).map(Span::last).ifPresent(sheet::setRowBreak);
        }
    }
}
