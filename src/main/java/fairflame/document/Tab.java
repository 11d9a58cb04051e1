package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.document.page.PageFormat;
import fairflame.document.sheet.Template;
import java.math.BigDecimal;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One sheet of a spreadsheet, written row by row from the top. */
final class Tab {
    /** Height in points of a row with a large title. */
    static final float TITLE = 28;
    /** Height in points of a row that stands out. */
    static final float TALL = 20;

    private static final int WIDTH_UNIT = 256;
    private static final float ROW = 16;
    // A sheet with more columns is printed across the paper.
    private static final int LAST_UPRIGHT = 4;

    private final XSSFSheet sheet;
    private final SheetStyles styles;
    private int row = -1;

    Tab(XSSFWorkbook book, SheetStyles styles, String name, int... widths) {
        this.sheet = book.createSheet(Template.unused(book, name));
        this.styles = styles;
        sheet.setDisplayGridlines(false);
        for (int i = 0; i < widths.length; i++) {
            sheet.setColumnWidth(i, widths[i] * WIDTH_UNIT);
        }
    }

    /** Begins the next row. */
    Tab next() {
        return next(ROW);
    }

    /** Begins the next row, so many points high. */
    Tab next(float points) {
        row++;
        sheet.createRow(row).setHeightInPoints(points);
        return this;
    }

    Tab text(int column, String words, Look look) {
        cell(column, look).setCellValue(words);
        return this;
    }

    /** Text over several columns, tall enough for its lines. */
    Tab wide(int from, int to, String words, Look look) {
        for (int i = from; i <= to; i++) {
            cell(i, look);
        }
        text(from, words, look);
        if (to > from) {
            sheet.addMergedRegion(new CellRangeAddress(row, row, from, to));
        }
        // A merged cell does not grow by itself.
        grow(words, from, to);
        return this;
    }

    /** Text in one column that may need several lines. */
    Tab wrapped(int column, String words, Look look) {
        text(column, words, look);
        grow(words, column, column);
        return this;
    }

    private void grow(String words, int from, int to) {
        double characters = 0;
        for (int i = from; i <= to; i++) {
            characters += sheet.getColumnWidth(i) / (double) WIDTH_UNIT;
        }
        int lines = (int) Math.ceil(words.length() / characters);
        float height = 3 + Math.max(1, lines) * 13f;
        sheet.getRow(row).setHeightInPoints(Math.max(height, sheet.getRow(row).getHeightInPoints()));
    }

    Tab number(int column, BigDecimal value, Look look) {
        // A spreadsheet holds no decimal numbers; the nearest binary one shows the same cents.
        cell(column, look).setCellValue(value.doubleValue());
        return this;
    }

    /** Writes a formula; gives the address of its cell, such as {@code G7}. */
    String formula(int column, String formula, Look look) {
        cell(column, look).setCellFormula(formula);
        return at(column);
    }

    /** A remark on a cell of the row being written. */
    Tab note(int column, String words) {
        var anchor = new XSSFClientAnchor(0, 0, 0, 0, column + 1, row, column + 4, row + 4);
        var comment = sheet.createDrawingPatriarch().createCellComment(anchor);
        comment.setString(words);
        comment.setAuthor("");
        comment.setAddress(row, column);
        return this;
    }

    private Cell cell(int column, Look look) {
        var cell = sheet.getRow(row).createCell(column);
        cell.setCellStyle(styles.of(look));
        return cell;
    }

    /** Address of a cell of the row being written. */
    String at(int column) {
        return new CellAddress(row, column).formatAsString();
    }

    /** Number of the row being written, from 1 as formulas count. */
    int number() {
        return row + 1;
    }

    /** A cell's address with its sheet, for formulas elsewhere. */
    String from(String address) {
        return "'" + sheet.getSheetName().replace("'", "''") + "'!" + address;
    }

    /** Keeps the rows down to this one in view, and prints them on every page. */
    Tab freeze(int firstRepeated) {
        sheet.createFreezePane(0, row + 1);
        sheet.setRepeatingRows(new CellRangeAddress(firstRepeated, row, -1, -1));
        return this;
    }

    /** Sets what is printed: all that was written, one page wide, with a page count at the foot. */
    void print(XSSFWorkbook book, int lastColumn, PageFormat format, String foot) {
        sheet.setMargin(PageMargin.LEFT, 0.6);
        sheet.setMargin(PageMargin.RIGHT, 0.6);
        book.setPrintArea(book.getSheetIndex(sheet), 0, lastColumn, 0, Math.max(row, 0));
        sheet.setFitToPage(true);
        sheet.setAutobreaks(true);
        var setup = sheet.getPrintSetup();
        setup.setPaperSize(format == PageFormat.LETTER ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE);
        setup.setLandscape(lastColumn > LAST_UPRIGHT);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        sheet.getFooter().setLeft(foot.replace("&", "&&"));
        sheet.getFooter().setRight("&P / &N");
    }
}
