package fairflame.document;

import fairflame.invoice.order.OrderSheet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An order as a spreadsheet whose amounts and total are formulas. */
public final class OrderSheetXlsx {
    private static final int FIRST_LINE = 6;
    private static final int[] WIDTHS = {14, 52, 10, 8, 12, 12, 30};
    private static final String[] HEADS = {"Part", "Description", "Quantity", "Unit", "Cost", "Amount", "For"};

    private OrderSheetXlsx() {}

    public static byte[] write(OrderSheet order, String number, LocalDate made) {
        try (var book = new XSSFWorkbook();
                var out = new ByteArrayOutputStream()) {
            fill(book, order, number, made);
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            book.getProperties()
                    .getCoreProperties()
                    .setCreated(java.util.Optional.of(java.util.Date.from(
                            made.atStartOfDay(java.time.ZoneOffset.UTC).toInstant())));
            book.write(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory could not be written", e);
        }
    }

    private static void fill(XSSFWorkbook book, OrderSheet order, String number, LocalDate made) {
        var sheet = book.createSheet("Order");
        for (int i = 0; i < WIDTHS.length; i++) {
            sheet.setColumnWidth(i, WIDTHS[i] * 256);
        }
        var strong = book.createCellStyle();
        var font = book.createFont();
        font.setBold(true);
        strong.setFont(font);
        var money = book.createCellStyle();
        money.setDataFormat(book.createDataFormat().getFormat("#,##0.00"));
        words(sheet, 0, "Order " + number, strong);
        words(
                sheet,
                1,
                order.supplier().name() + ", " + order.supplier().phone() + ", "
                        + order.supplier().email(),
                null);
        words(sheet, 2, made.toString(), null);
        var head = sheet.createRow(FIRST_LINE - 2);
        for (int i = 0; i < HEADS.length; i++) {
            head.createCell(i).setCellValue(HEADS[i]);
            head.getCell(i).setCellStyle(strong);
        }
        lines(sheet, order, money);
    }

    private static void words(Sheet sheet, int row, String text, @org.jspecify.annotations.Nullable CellStyle style) {
        var cell = sheet.createRow(row).createCell(0);
        cell.setCellValue(text);
        if (style != null) {
            cell.setCellStyle(style);
        }
    }

    private static void lines(Sheet sheet, OrderSheet order, CellStyle money) {
        var at = FIRST_LINE;
        for (var line : order.lines()) {
            var row = sheet.createRow(at - 1);
            row.createCell(0).setCellValue(line.part().number());
            row.createCell(1).setCellValue(line.part().description());
            row.createCell(2).setCellValue(line.quantity().doubleValue());
            row.createCell(3).setCellValue(line.part().unit());
            row.createCell(4).setCellValue(line.part().cost().getAmount().doubleValue());
            row.createCell(5).setCellFormula("ROUND(C" + at + "*E" + at + ",2)");
            row.createCell(6)
                    .setCellValue(String.join(
                            ", ",
                            line.uses().stream()
                                    .map(use ->
                                            use.quote() + " (" + use.quantity().toPlainString() + ")")
                                    .toList()));
            row.getCell(4).setCellStyle(money);
            row.getCell(5).setCellStyle(money);
            at++;
        }
        var total = sheet.createRow(at);
        total.createCell(1).setCellValue("Cost of this order before tax");
        total.createCell(5).setCellFormula("SUM(F" + FIRST_LINE + ":F" + (at - 1) + ")");
        total.getCell(5).setCellStyle(money);
    }
}
