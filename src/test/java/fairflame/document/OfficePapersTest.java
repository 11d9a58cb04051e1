package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.Part;
import fairflame.catalog.Supplier;
import fairflame.document.page.PageFormat;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.account.Ageing;
import fairflame.invoice.account.CustomerAccount;
import fairflame.invoice.account.Movement;
import fairflame.invoice.account.Statement;
import fairflame.invoice.order.OrderLine;
import fairflame.invoice.order.OrderSheet;
import fairflame.invoice.order.PartNeeded;
import fairflame.invoice.report.ActualHours;
import fairflame.invoice.report.ShopReport;
import fairflame.invoice.report.TimeComparison;
import fairflame.store.Folder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class OfficePapersTest {
    private static final CurrencyUnit USD = CurrencyUnit.USD;
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final PaperText TEXT = PaperText.parse(Folder.shipped("templates"), "en");

    private static OrderSheet order() {
        var supplier = new Supplier("tern", "Tern and Tide Pool Parts", "555-0111", "orders@ternandtide.example", 2);
        return new OrderSheet(
                supplier,
                List.of(
                        line("HS-01", "High-limit switch, water side", "each", "31.00", "3", "3", "2", "1"),
                        line(
                                "TS-02",
                                "Thread sealant for water-side threads, stays soft",
                                "tube",
                                "6.40",
                                "1",
                                "0.7",
                                "0.4",
                                "0.3"),
                        line(
                                "GP-04",
                                "Steel gas pipe, schedule 40, black, 1-1/4 in, by the foot",
                                "ft",
                                "4.25",
                                "62.5",
                                "62.5",
                                "0",
                                "62.5")));
    }

    private static OrderLine line(
            String number,
            String words,
            String unit,
            String cost,
            String order,
            String needed,
            String one,
            String two) {
        var part = new Part(
                number, "role", "", words, false, unit, Money.parse("USD " + cost), Optional.empty(), "tern", 12, "x");
        var uses = new ArrayList<PartNeeded>();
        for (var use : List.of(Map.entry("Q-2026-0001", one), Map.entry("Q-2026-0004", two))) {
            if (!use.getValue().equals("0")) {
                uses.add(new PartNeeded(use.getKey(), 1, number, new BigDecimal(use.getValue())));
            }
        }
        var quantity = new BigDecimal(order);
        return new OrderLine(
                part,
                quantity,
                new BigDecimal(needed),
                uses,
                part.cost().multipliedBy(quantity, java.math.RoundingMode.HALF_UP));
    }

    private static String words(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static byte[] kept(String name, byte[] bytes) throws IOException {
        Files.createDirectories(Path.of("target/papers"));
        Files.write(Path.of("target/papers", name), bytes);
        return bytes;
    }

    @Test
    void theOrderSheetListsWhatToOrderAndWhatEachJobUses() throws IOException {
        var pdf = kept("order.pdf", OrderSheetPdf.write(order(), "O-2026-0001", DAY, USD, TEXT, PageFormat.LETTER));
        assertThat(words(pdf))
                .contains("Tern and Tide Pool Parts")
                .contains("HS-01")
                .contains("365.03")
                .contains("Q-2026-0004");
        assertThat(OrderSheetPdf.write(order(), "O-2026-0001", DAY, USD, TEXT, PageFormat.LETTER))
                .isEqualTo(pdf);
    }

    @Test
    void theOrderSpreadsheetAddsUpByItsOwnFormulas() throws IOException {
        var bytes = kept("order.xlsx", OrderSheetXlsx.write(order(), "O-2026-0001", DAY, USD, TEXT, PageFormat.LETTER));
        try (var book = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            var sheet = book.getSheetAt(0);
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertThat(sheet.getRow(9).getCell(5).getCellFormula()).isEqualTo("SUM(F6:F8)");
            assertThat(sheet.getRow(9).getCell(5).getNumericCellValue()).isEqualTo(365.03);
        }
        assertThat(order().cost(USD)).isEqualTo(Money.parse("USD 365.03"));
        assertThat(OrderSheetXlsx.write(order(), "O-2026-0001", DAY, USD, TEXT, PageFormat.LETTER))
                .isEqualTo(bytes);
    }

    @Test
    void theBalanceOfAStatementNeverStandsAloneOnAPage() throws IOException {
        var random = new RandomInvoices(new Random(4));
        var invoices = new ArrayList<fairflame.invoice.Invoice>();
        int pages = 0;
        for (int i = 1; i <= 32; i++) {
            invoices.add(random.full(i, "Q-2026-0001", DAY.plusDays(i)));
            var account = new CustomerAccount(USD, invoices, List.of());
            var span = new Statement.Span(DAY.plusDays(1), DAY.plusDays(120));
            var statement = Statement.of(invoices.get(0).customer(), USD, List.of(account), span);
            var ageing = Ageing.of(span.to(), USD, List.of(account));
            try (var document = Loader.loadPDF(StatementPdf.write(statement, ageing, TEXT, PageFormat.LETTER))) {
                pages = document.getNumberOfPages();
                for (int page = 1; page <= pages; page++) {
                    var stripper = new PDFTextStripper();
                    stripper.setStartPage(page);
                    stripper.setEndPage(page);
                    var lines = stripper.getText(document).lines().toList();
                    for (int at = 1; at < lines.size(); at++) {
                        if (lines.get(at).matches("(All that is open|June 30, 2026 Balance) .*")) {
                            // The line above a sum is a row with an amount, not a heading.
                            assertThat(lines.get(at - 1))
                                    .as("%d invoices, page %d", i, page)
                                    .matches(".*\\d\\.\\d\\d");
                        }
                    }
                }
            }
        }
        assertThat(pages).isGreaterThan(1);
    }

    @Test
    void theStatementRunsFromWhatWasBroughtForwardToTheBalance() throws IOException {
        var random = new RandomInvoices(new Random(21));
        var one = random.full(1, "Q-2026-0001", DAY);
        var two = random.full(2, "Q-2026-0001", DAY.plusDays(40));
        var note = random.credit(one, "C-2026-0001", DAY.plusDays(50));
        var paid = new Movement(
                "P-1",
                Movement.Kind.PAYMENT,
                DAY.plusDays(3),
                "Q-2026-0001",
                Optional.empty(),
                one.totals().total(),
                "card",
                false,
                "");
        var account = new CustomerAccount(USD, List.of(one, two, note), List.of(paid));
        var span = new Statement.Span(DAY.plusDays(1), DAY.plusDays(120));
        var statement = Statement.of(one.customer(), USD, List.of(account), span);
        var ageing = Ageing.of(span.to(), USD, List.of(account));
        var pdf = kept("statement.pdf", StatementPdf.write(statement, ageing, TEXT, PageFormat.LETTER));
        assertThat(words(pdf))
                .contains("Rosa & Ned <Okafor>")
                .contains("Brought forward")
                .contains("Credit note for I-2026-1")
                .contains(TEXT.figures().money(account.balance()));
    }

    @Test
    void theReportDrawsWinsRevenueAndHours() throws IOException {
        var hours = new ArrayList<ActualHours>();
        for (var actual : List.of("0.55", "0.60", "0.65", "0.65", "0.70", "0.75", "0.80", "0.60", "0.65")) {
            hours.add(hours("R03", "", "0.50", actual));
        }
        for (var actual : List.of("2.4", "3.1", "2.8")) {
            hours.add(hours("R20", "tight-space", "3.00", actual));
        }
        var report = new ShopReport(
                DAY,
                DAY.plusDays(90),
                List.of(
                        new ShopReport.WinRate("C-WET-SWITCH", 12, 9),
                        new ShopReport.WinRate("C-PIPE-SIZE", 7, 3),
                        new ShopReport.WinRate("C-IGNITER", 2, 0)),
                List.of(
                        new ShopReport.Revenue("R03 + R04", 9, Money.parse("USD 3918.40")),
                        new ShopReport.Revenue("R20", 3, Money.parse("USD 2760.15")),
                        new ShopReport.Revenue("diagnosis", 4, Money.parse("USD 480.00"))),
                TimeComparison.of(hours));
        var names = Map.of(
                "C-WET-SWITCH", "Water-side switches leak to ground",
                "C-PIPE-SIZE", "Gas line too small",
                "R03", "High-limit switch",
                "R04", "Pressure switch",
                "R20", "Run of gas pipe");
        var pdf = kept("report.pdf", ReportPdf.write(report, names, TEXT, PageFormat.LETTER));
        assertThat(words(pdf))
                .contains("9 / 12")
                .contains("Gas line too small")
                .contains("3,918.40")
                .contains("High-limit switch: the jobs suggest this factor");
    }

    /** Many rows, names of two lines, amounts of twelve digits: every row is printed, nothing over anything else. */
    @Test
    void aLargeReportKeepsEveryRowWholeOverItsPages() throws IOException {
        var wins = new ArrayList<ShopReport.WinRate>();
        var revenue = new ArrayList<ShopReport.Revenue>();
        var hours = new ArrayList<ActualHours>();
        var long0 = "A cause with a name so long that it cannot stand in one line of half a page, number ";
        var names = new java.util.HashMap<String, String>();
        for (int i = 0; i < 40; i++) {
            names.put("C" + i, long0 + i);
            wins.add(new ShopReport.WinRate("C" + i, 100_000 - i, i));
            revenue.add(new ShopReport.Revenue(
                    "T" + i + " + U" + i, i + 1, Money.parse("USD " + (i == 0 ? "987654321098.76" : "0.0" + i % 10))));
            hours.add(hours("T" + i, i % 2 == 0 ? "" : "tight-space", "0.05", i == 3 ? "100" : "0.0" + (1 + i % 9)));
        }
        var report = new ShopReport(DAY, DAY.plusDays(90), wins, revenue, TimeComparison.of(hours));
        var pdf = kept("report-large.pdf", ReportPdf.write(report, names, TEXT, PageFormat.LETTER));
        var words = words(pdf).replaceAll("\\s+", " ");
        for (int i = 0; i < 40; i++) {
            assertThat(words)
                    .contains(long0 + i + " " + i + " / " + String.valueOf(100_000 - i))
                    .contains("T" + i + " + U" + i);
        }
        assertThat(words).contains("987,654,321,098.76").doesNotContain("\u2026");
        new ReadBack(pdf).assertWellSet(PageFormat.LETTER);
    }

    @Test
    void aReportWithoutFiguresSaysSo() throws IOException {
        var empty = new ShopReport(DAY, DAY, List.of(), List.of(), List.of());
        assertThat(words(ReportPdf.write(empty, Map.of(), TEXT, PageFormat.LETTER)))
                .contains("Nothing yet in this time.");
    }

    private static ActualHours hours(String task, String condition, String standard, String actual) {
        return new ActualHours("Q-2026-0001", DAY, task, condition, new BigDecimal(standard), new BigDecimal(actual));
    }
}
