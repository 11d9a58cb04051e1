package fairflame.document.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Makes rows tall enough for the words that were filled in, where the template lets them wrap. */
final class RowHeights {
    private static final double WIDTH_UNIT = 256;
    // Widths count characters of ten points: common practice, no source.
    private static final double WIDTH_POINTS = 10;
    private static final float LEADING = 1.3f;
    private static final float AROUND = 3;

    private final XSSFSheet sheet;
    private final List<CellRangeAddress> merged;

    RowHeights(XSSFSheet sheet, List<CellRangeAddress> merged) {
        this.sheet = sheet;
        this.merged = merged;
    }

    void fit(XSSFCell cell, TemplateCell from, String words) {
        CellStyle style = cell.getCellStyle();
        if (!style.getWrapText()) {
            return;
        }
        float points = ((XSSFCellStyle) style).getFont().getFontHeightInPoints();
        double characters = width(cell, from) / WIDTH_UNIT * WIDTH_POINTS / points;
        long lines = words.lines()
                .mapToLong(line -> Math.max(1, (long) Math.ceil(line.length() / characters)))
                .sum();
        float needed = AROUND + Math.max(1, lines) * LEADING * points;
        var row = cell.getRow();
        row.setHeightInPoints(Math.max(needed, row.getHeightInPoints()));
    }

    // A merged cell does not grow by itself in any office program.
    private int width(XSSFCell cell, TemplateCell from) {
        int columns = merged.stream()
                .filter(area -> area.isInRange(from.row(), from.column()))
                .mapToInt(area -> area.getLastColumn() - area.getFirstColumn())
                .findFirst()
                .orElse(0);
        int width = 0;
        for (int i = 0; i <= columns; i++) {
            width += sheet.getColumnWidth(cell.getColumnIndex() + i);
        }
        return width;
    }
}
