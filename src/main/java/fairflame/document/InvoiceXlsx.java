package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** An invoice, part invoice or credit note as a spreadsheet of live formulas. */
public final class InvoiceXlsx {
    private static final int LABELS = 5;
    private static final int AMOUNTS = 6;

    private InvoiceXlsx() {}

    /** The file's bytes: the same for the same invoice and words. Formulas carry their values. */
    public static byte[] write(Invoice invoice, PaperText text, PageFormat format) {
        try (var book = new XSSFWorkbook()) {
            var styles = new SheetStyles(book, text.figures().sign(invoice.currency()));
            fill(book, styles, invoice, text, format);
            var title = text.say(Label.INVOICE) + " " + invoice.number();
            return XlsxFile.write(book, title, invoice.seller().name(), invoice.issued());
        } catch (IOException e) {
            throw new UncheckedIOException("spreadsheet could not be closed", e);
        }
    }

    private static void fill(
            XSSFWorkbook book, SheetStyles styles, Invoice invoice, PaperText text, PageFormat format) {
        var tab = new Tab(book, styles, text.say(InvoicePdf.title(invoice.kind())), ItemTab.widths());
        var foot = text.say(Label.FOOT_INVOICE, invoice.number());
        head(tab, invoice, text);
        var sheet = new ItemTab(tab, new Items(invoice.lines(), invoice.totals(), invoice.taxRule()), text);
        balance(tab, sheet.write(), invoice, text);
        tab.print(book, sheet.lastColumn(), format, foot);
        var reasons = new ReasonsTab(new Tab(book, styles, text.say(Label.SHEET_REASONS), ReasonsTab.widths()), text);
        reasons.add("", invoice.lines()).tab().print(book, ReasonsTab.LAST_COLUMN, format, foot);
    }

    private static void head(Tab tab, Invoice invoice, PaperText text) {
        var figures = text.figures();
        var subtitle = invoice.kind() == Invoice.Kind.CREDIT
                ? text.say(Label.CREDIT_SUBTITLE, invoice.corrects())
                : text.say(Label.INVOICE_SUBTITLE, invoice.quote(), Integer.toString(invoice.revision()));
        tab.next(Tab.TITLE).text(0, text.say(InvoicePdf.title(invoice.kind())) + " " + invoice.number(), Look.TITLE);
        tab.next().text(0, invoice.seller().name(), Look.SECTION);
        tab.next().text(0, subtitle, Look.LABEL);
        tab.next().text(0, text.say(Label.BILL_TO) + ": " + invoice.customer().name(), Look.LABEL);
        tab.next()
                .text(
                        0,
                        text.say(Label.ISSUED) + ": " + figures.date(invoice.issued()) + ", " + text.say(Label.DUE)
                                + ": " + figures.date(invoice.due()),
                        Look.LABEL);
        tab.next();
    }

    private static void balance(Tab tab, String total, Invoice invoice, PaperText text) {
        tab.next();
        var sum = new StringBuilder(total);
        for (var payment : invoice.payments()) {
            tab.next().text(LABELS, InvoicePdf.paid(payment, text), Look.SUM_LABEL);
            tab.number(AMOUNTS, payment.amount().getAmount(), Look.SUM_MONEY);
            sum.append('-').append(tab.at(AMOUNTS));
        }
        tab.next(Tab.TALL).text(LABELS, text.say(Label.BALANCE), Look.TOTAL_LABEL);
        tab.formula(AMOUNTS, "ROUND(" + sum + ",2)", Look.TOTAL_MONEY);
    }
}
