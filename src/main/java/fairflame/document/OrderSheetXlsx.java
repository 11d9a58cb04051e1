package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.document.page.PageFormat;
import fairflame.invoice.order.OrderLine;
import fairflame.invoice.order.OrderSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;

/** An order as a spreadsheet whose amounts and total are formulas. */
public final class OrderSheetXlsx {
    private static final int QUANTITY = 2;
    private static final int COST = 4;
    private static final int AMOUNT = 5;
    private static final int USES = 6;
    private static final int[] WIDTHS = {14, 52, 12, 9, 12, 14, 34};

    private OrderSheetXlsx() {}

    /** The file's bytes: the same for the same order and words. Formulas carry their values. */
    public static byte[] write(
            OrderSheet order, String number, LocalDate made, CurrencyUnit currency, PaperText text, PageFormat format) {
        try (var book = new XSSFWorkbook()) {
            var title = text.office("Order") + " " + number;
            var tab = new Tab(book, new SheetStyles(book, text.figures().sign(currency)), text.office("Order"), WIDTHS);
            head(tab, order, title, text.figures().date(made));
            lines(tab, order, text);
            tab.print(book, USES, format, title);
            XSSFFormulaEvaluator.evaluateAllFormulaCells(book);
            return XlsxFile.write(book, title, text.company().seller().name(), made);
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory could not be closed", e);
        }
    }

    private static void head(Tab tab, OrderSheet order, String title, String day) {
        var supplier = order.supplier();
        tab.next(Tab.TITLE).text(0, title, Look.TITLE);
        tab.next().text(0, supplier.name() + ", " + supplier.phone() + ", " + supplier.email(), Look.SECTION);
        tab.next().text(0, day, Look.LABEL);
        tab.next();
    }

    private static void lines(Tab tab, OrderSheet order, PaperText text) {
        tab.next(Tab.TALL)
                .text(0, text.office("Part"), Look.HEADER)
                .text(1, text.say(Label.DESCRIPTION), Look.HEADER)
                .text(QUANTITY, text.say(Label.QUANTITY), Look.HEADER_RIGHT)
                .text(QUANTITY + 1, text.say(Label.UNIT), Look.HEADER)
                .text(COST, text.office("Cost"), Look.HEADER_RIGHT)
                .text(AMOUNT, text.say(Label.AMOUNT), Look.HEADER_RIGHT)
                .text(USES, text.office("Job"), Look.HEADER)
                .freeze(tab.number() - 1);
        int first = tab.number() + 1;
        order.lines().forEach(line -> line(tab, line, text));
        int last = tab.number();
        tab.next();
        tab.next(Tab.TALL).text(COST, text.office("Cost of this order before tax"), Look.TOTAL_LABEL);
        tab.formula(AMOUNT, "SUM(F" + first + ":F" + last + ")", Look.TOTAL_MONEY);
    }

    private static void line(Tab tab, OrderLine line, PaperText text) {
        var uses = line.uses().stream()
                .map(use -> use.quote() + " (" + text.figures().shortest(use.quantity()) + ")")
                .collect(Collectors.joining(", "));
        tab.next()
                .text(0, line.part().number(), Look.TEXT)
                .wrapped(1, line.part().description(), Look.TEXT)
                .number(QUANTITY, line.quantity(), Look.QUANTITY)
                .text(QUANTITY + 1, text.word("units", line.part().unit()), Look.AFTER)
                .number(COST, line.part().cost().getAmount(), Look.MONEY)
                .wrapped(USES, uses, Look.AFTER);
        tab.formula(AMOUNT, "ROUND(" + tab.at(QUANTITY) + "*" + tab.at(COST) + ",2)", Look.MONEY);
    }
}
