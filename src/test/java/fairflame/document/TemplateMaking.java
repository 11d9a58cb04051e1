package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.document.page.PageFormat;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes the spreadsheets in {@code templates/} from nothing. How to have them made stands in docs/formats. */
final class TemplateMaking {
    /** Stands for the sign of the currency. */
    private static final String CURRENCY = "\u00A4";

    private static final LocalDate MADE = LocalDate.of(2026, 1, 1);
    private static final int[] ITEM_WIDTHS = {6, 13, 50, 14, 10, 14, 14, 9, 14, 16, 16};

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final SheetStyles styles = new SheetStyles(book, CURRENCY);

    private TemplateMaking() {}

    static byte[] quote() {
        var making = new TemplateMaking();
        // The sheet that formulas of the overview point at has to be there; then the overview goes in front.
        making.choice();
        making.overview();
        making.book.setSheetOrder("Overview", 0);
        making.reasons("{reason.choice}");
        making.help(List.of("Overview", "Choice (written once for each choice)", "Reasons (may be deleted)"));
        return making.written("Layout of a quote");
    }

    static byte[] invoice() {
        var making = new TemplateMaking();
        making.bill();
        making.reasons("");
        making.help(List.of("Invoice (part invoices and credit notes too)", "Reasons (may be deleted)"));
        return making.written("Layout of an invoice");
    }

    private byte[] written(String title) {
        // An office program works the formulas out when it opens the file; nobody did before.
        book.setForceFormulaRecalculation(true);
        try (book) {
            return XlsxFile.write(book, title, "Fairflame", MADE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void overview() {
        var tab = new Tab(book, styles, "Overview", 24, 52, 18, 18);
        tab.next(Tab.TITLE).text(0, "{title}", Look.TITLE);
        tab.next().text(0, "{seller.name}", Look.SECTION);
        tab.next();
        fact(tab, "number", "quote.number");
        fact(tab, "revision", "quote.revision");
        fact(tab, "date", "quote.made");
        fact(tab, "valid-until", "quote.valid-until");
        fact(tab, "prepared-for", "customer");
        fact(tab, "site", "site");
        fact(tab, "heater", "heater");
        fact(tab, "found", "found");
        tab.next().text(0, "{row only if noticed}", Look.LABEL);
        tab.next().wide(0, 3, "{row only if noticed}{words.notice}", Look.NOTICE);
        tab.next().wide(0, 3, "{row for each notice}{notice.words}", Look.NOTICE);
        tab.next();
        tab.next(Tab.TALL)
                .text(0, "{words.choices-title}", Look.HEADER)
                .text(1, "{words.description}", Look.HEADER)
                .text(2, "{words.deposit}", Look.HEADER_RIGHT)
                .text(3, "{words.total}", Look.HEADER_RIGHT);
        tab.next()
                .text(0, "{row for each choice}{choice.name}", Look.STRONG)
                .text(1, "{choice.title}", Look.TEXT)
                .text(2, "{choice.deposit}", Look.MONEY);
        tab.formula(3, "Choice!G14+N(\"{choice.total}\")", Look.MONEY);
        tab.print(book, 3, PageFormat.LETTER, "{foot}");
    }

    private static void fact(Tab tab, String label, String name) {
        tab.next().text(0, "{words." + label + "}", Look.LABEL).wide(1, 3, "{" + name + "}", Look.TEXT);
    }

    private void choice() {
        var tab = new Tab(book, styles, "Choice", ITEM_WIDTHS);
        tab.next(Tab.TITLE).text(0, "{choice.name}: {choice.title}", Look.TITLE);
        tab.next().text(0, "{foot}", Look.LABEL);
        tab.next();
        items(tab);
        tab.next();
        tab.next().wide(0, 6, "{row for each rounding}{rounding.words}", Look.LABEL);
        tab.print(book, 7, PageFormat.LETTER, "{foot}");
    }

    /** Header, line, totals: ten rows, the total in the last, all amounts in G. */
    private static void items(Tab tab) {
        tab.next(Tab.TALL)
                .text(0, "{words.line}", Look.HEADER)
                .text(1, "", Look.HEADER)
                .text(2, "{words.description}", Look.HEADER)
                .text(3, "{words.quantity}", Look.HEADER_RIGHT)
                .text(4, "{words.unit}", Look.HEADER)
                .text(5, "{words.unit-price}", Look.HEADER_RIGHT)
                .text(6, "{words.amount}", Look.HEADER_RIGHT)
                .text(7, "{words.taxed}", Look.HEADER)
                .text(8, "{column hidden unless discounted}{words.discount-share}", Look.HEADER_RIGHT)
                .text(
                        9,
                        "{column for each tax}{column only if tax-by-line, rounded-nearest}{tax.of-line}",
                        Look.HEADER_RIGHT)
                .text(
                        10,
                        "{column for each tax}{column only if tax-by-line, rounded-down}{tax.of-line}",
                        Look.HEADER_RIGHT)
                .freeze(tab.number() - 1);
        int line = tab.number() + 1;
        int taxes = line + 5;
        tab.next()
                .text(0, "{line.id}", Look.TEXT)
                .text(1, "{line.kind}", Look.TEXT)
                .text(2, "{row for each line}{line.description}", Look.TEXT)
                .text(3, "{line.quantity}", Look.QUANTITY)
                .text(4, "{line.unit}", Look.AFTER)
                .text(5, "{line.price}", Look.MONEY)
                .text(7, "{line.taxed}", Look.AFTER)
                .text(8, "{line.discount}", Look.MONEY);
        // A half cent in binary may lie a little below: the product is rounded to ten places first.
        tab.formula(6, "ROUND(ROUND(D%1$d*F%1$d,10),2)+N(\"{line.net}\")".formatted(line), Look.MONEY);
        var exact = "ROUND((G%1$d-I%1$d)*E%2$d,10)";
        tab.formula(9, lineTax("ROUND", exact.formatted(line, taxes + 2), line), Look.MONEY);
        tab.formula(10, lineTax("ROUNDDOWN", exact.formatted(line, taxes + 3), line), Look.MONEY);
        tab.next();
        tab.next().text(5, "{words.subtotal}", Look.SUM_LABEL);
        tab.formula(6, "ROUND(SUM(G%1$d:G%1$d),2)+N(\"{sum.subtotal}\")".formatted(line), Look.SUM_MONEY);
        tab.next().text(5, "{row only if discounted}{words.discount}", Look.SUM_LABEL);
        tab.formula(6, "-ROUND(SUM(I%1$d:I%1$d),2)+N(\"{sum.discount}\")".formatted(line), Look.SUM_MONEY);
        tab.next()
                .text(3, "{row only if taxed}{words.tax-base}", Look.SUM_LABEL)
                .text(4, "{words.tax-rate}", Look.SUM_LABEL);
        tax(tab, "tax-on-document, rounded-nearest", line, "ROUND(ROUND(D%1$d*E%1$d,10),2)");
        tax(tab, "tax-on-document, rounded-down", line, "ROUNDDOWN(ROUND(D%1$d*E%1$d,10),2)");
        tax(tab, "tax-by-line, rounded-nearest", line, "ROUND(SUM(J" + line + ":J" + line + "),2)");
        tax(tab, "tax-by-line, rounded-down", line, "ROUND(SUM(K" + line + ":K" + line + "),2)");
        tab.next(Tab.TALL).text(5, "{words.total}", Look.TOTAL_LABEL);
        tab.formula(
                6, "ROUND(SUM(G%d:G%d),2)+N(\"{sum.total}\")".formatted(line + 2, tab.number() - 1), Look.TOTAL_MONEY);
    }

    private static void tax(Tab tab, String when, int line, String due) {
        tab.next()
                .text(2, "{row for each tax}{row only if " + when + "}{tax.name}", Look.SUM_LABEL)
                .text(4, "{tax.rate}", Look.RATE)
                .text(5, "{words.no-tax}", Look.SUM_LABEL);
        var taxed = "SUMIF(H%1$d:H%1$d,\"{words.yes}\",%2$s%1$d:%2$s%1$d)";
        tab.formula(
                3,
                "ROUND(" + taxed.formatted(line, "G") + "-" + taxed.formatted(line, "I") + ",2)+N(\"{tax.base}\")",
                Look.SUM_MONEY);
        tab.formula(6, due.formatted(tab.number()) + "+N(\"{tax.amount}\")", Look.SUM_MONEY);
    }

    private static String lineTax(String rounding, String exact, int line) {
        return "IF(H" + line + "=\"{words.yes}\"," + rounding + "(" + exact + ",2),0)+N(\"{line.tax}\")";
    }

    private void bill() {
        var tab = new Tab(book, styles, "Invoice", ITEM_WIDTHS);
        tab.next(Tab.TITLE).text(0, "{title} {invoice.number}", Look.TITLE);
        tab.next().text(0, "{seller.name}", Look.SECTION);
        tab.next().text(0, "{invoice.for}", Look.LABEL);
        tab.next().text(0, "{words.bill-to}: {customer.name}", Look.LABEL);
        tab.next().text(0, "{words.issued}: {invoice.issued}, {words.due}: {invoice.due}", Look.LABEL);
        tab.next();
        items(tab);
        var total = tab.at(6);
        tab.next();
        tab.next().wide(0, 6, "{row for each rounding}{rounding.words}", Look.LABEL);
        tab.next();
        tab.next().text(5, "{row for each payment}{payment.words}", Look.SUM_LABEL);
        tab.text(6, "{payment.amount}", Look.SUM_MONEY);
        var paid = "SUM(%1$s:%1$s)".formatted(tab.at(6));
        tab.next(Tab.TALL).text(5, "{row only if owed}{words.balance}", Look.TOTAL_LABEL);
        tab.formula(6, "ROUND(" + total + "-" + paid + ",2)+N(\"{sum.balance}\")", Look.TOTAL_MONEY);
        tab.next(Tab.TALL).text(5, "{row only if in-favour}{words.credit-balance}", Look.TOTAL_LABEL);
        tab.formula(6, "-ROUND(" + total + "-" + paid + ",2)+N(\"{sum.favour}\")", Look.TOTAL_MONEY);
        tab.print(book, 7, PageFormat.LETTER, "{foot}");
    }

    private void reasons(String choice) {
        var tab = new Tab(book, styles, "Reasons", 12, 8, 18, 70, 34);
        tab.next(Tab.TALL)
                .text(0, "", Look.HEADER)
                .text(1, "{words.line}", Look.HEADER)
                .text(2, "{words.ground}", Look.HEADER)
                .text(3, "{words.why}", Look.HEADER)
                .text(4, "{words.source}", Look.HEADER)
                .freeze(0);
        tab.next()
                .text(0, choice, Look.TEXT)
                .text(1, "{reason.line}", Look.TEXT)
                .text(2, "{reason.ground}", Look.TEXT)
                .text(3, "{row for each reason}{reason.words}", Look.TEXT)
                .text(4, "{reason.source}", Look.TEXT);
        tab.print(book, 4, PageFormat.LETTER, "{foot}");
    }

    /** The rules in short, for whoever opens the file; this sheet never reaches a customer. */
    private void help(List<String> sheets) {
        var tab = new Tab(book, styles, "Help", 34, 90);
        tab.next(Tab.TITLE).text(0, "How to change this layout", Look.TITLE);
        rule(
                tab,
                "Yours to change",
                "Fonts, colours, widths, heights, order of columns, pictures, words, further sheets.");
        rule(tab, "This sheet", "Stays behind: whoever gets the paper does not see it.");
        rule(tab, "Sheets", String.join("; ", sheets) + ".");
        rule(tab, "Placeholders", "A name in braces is filled in. Alone in its cell a number stays a number.");
        rule(
                tab,
                "row for each line",
                "In braces in any cell: the row is written for each line. Also notice, choice, tax, "
                        + "rounding, payment, reason; column for each tax.");
        rule(
                tab,
                "row only if taxed",
                "In braces: the row is left out otherwise. Also column only if, and column hidden "
                        + "unless. Several conditions are set apart by commas.");
        rule(
                tab,
                "Formulas",
                "Work as usual and follow their rows. A repeated row outside of itself means all it became.");
        rule(
                tab,
                "+N(\"{line.net}\")",
                "At the end of a formula: the amount it has to come to. It counts as nothing and "
                        + "is taken away. A formula that comes to another amount is refused.");
        rule(tab, "Sign of the currency", "\u00A4 in a number format becomes the sign of the quote's currency.");
        rule(tab, "All names", "docs/formats/spreadsheet.md");
    }

    private static void rule(Tab tab, String what, String words) {
        tab.next().text(0, what, Look.LABEL).wrapped(1, words, Look.TEXT);
    }
}
