package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.document.page.PageFormat;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.SplitPapers;
import fairflame.quote.Line;
import fairflame.quote.Quote;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spreadsheets in a layout of the shop's own. */
class OwnLayoutTest {
    private static final Path SHIPPED = Path.of("templates");
    private static final Path SAVED = Path.of("src/test/resources/fairflame/document/saved-by-office");
    // One transparent point, made by hand.
    private static final byte[] LOGO = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    private static Map<String, byte[]> files(Path folder) {
        try {
            return Map.of(
                    "quote.xlsx", Files.readAllBytes(folder.resolve("quote.xlsx")),
                    "invoice.xlsx", Files.readAllBytes(folder.resolve("invoice.xlsx")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The shipped layouts with one of them changed by hand. */
    private static SheetTemplates changed(String file, Consumer<XSSFWorkbook> change) {
        var shipped = files(SHIPPED);
        var out = new ByteArrayOutputStream();
        try (var book = new XSSFWorkbook(new ByteArrayInputStream(shipped.getOrDefault(file, new byte[0])))) {
            change.accept(book);
            book.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var all = new java.util.HashMap<>(shipped);
        all.put(file, out.toByteArray());
        return SheetTemplates.parse(all);
    }

    private static void set(XSSFSheet sheet, String address, String text) {
        var at = new CellAddress(address);
        var row = sheet.getRow(at.getRow()) == null ? sheet.createRow(at.getRow()) : sheet.getRow(at.getRow());
        var cell = row.getCell(at.getColumn()) == null ? row.createCell(at.getColumn()) : row.getCell(at.getColumn());
        if (text.startsWith("=")) {
            cell.setCellFormula(text.substring(1));
        } else {
            cell.setBlank();
            cell.setCellValue(text);
        }
    }

    private static byte[] written(Quote quote, SheetTemplates layout) {
        return QuoteXlsx.write(quote, Optional.empty(), Papers.text(), PageFormat.LETTER, layout.quote());
    }

    @Test
    void aLayoutThatAnotherOfficeProgramSavedComesToTheSameCents() throws IOException {
        var saved = SheetTemplates.parse(files(SAVED));
        for (var quote : List.of(WetSwitches.quote(), GasLine.quote(), Unsettled.quote())) {
            try (var book = new SheetBack(written(quote, saved))) {
                for (var choice : quote.choices()) {
                    book.sheet("Choice " + choice.id()).assertSame(choice.lines(), choice.totals());
                }
                assertThat(book.sheets()).doesNotContain("Help");
            }
        }
        var file = InvoiceXlsx.write(GasLine.invoice(), Papers.text(), PageFormat.A4, saved.invoice());
        try (var book = new SheetBack(file)) {
            book.sheet("Invoice")
                    .assertSame(GasLine.invoice().lines(), GasLine.invoice().totals());
        }
    }

    @Test
    void randomInvoicesPartBillsAndCreditNotesComeToTheStoredCents() throws IOException {
        for (long seed = 0; seed < 6; seed++) {
            var random = new Random(seed);
            var papers = new ArrayList<>(SplitPapers.of(random));
            papers.add(new RandomInvoices(random).next(1));
            papers.add(new RandomInvoices(random).next(2));
            for (var invoice : papers) {
                // A formula that came to other cents would be refused while it is written; the balance is read back.
                var file = InvoiceXlsx.write(
                        invoice, Papers.text(), PageFormat.A4, Papers.sheets().invoice());
                try (var book = new SheetBack(file)) {
                    var sheet = book.sheet(Papers.text().say(InvoicePdf.title(invoice.kind())))
                            .saying("seed " + seed + ", " + invoice.number());
                    assertThat(sheet.cents("Total")).isEqualTo(invoice.totals().total());
                    var owed = !invoice.balance().isNegative();
                    assertThat(sheet.cents(owed ? "Balance due" : "Credit to you"))
                            .isEqualTo(invoice.balance().abs());
                }
            }
        }
    }

    @Test
    void columnsMayChangePlacesAndFurtherWordsFormulasSheetsAndPicturesAreCarried() throws IOException {
        var layout = changed("quote.xlsx", book -> {
            var sheet = book.getSheet("Choice");
            // The description goes where the kind was, and the share of each line in the whole stands beside it.
            set(sheet, "B5", "{row for each line}{line.description}");
            set(sheet, "C5", "{line.quantity} {line.unit} at {line.price}");
            set(sheet, "L4", "Share");
            set(sheet, "L5", "=ROUND(G5/SUM(G$5:G$5),6)");
            set(sheet, "M5", "=SUM(G$5:G5)");
            set(sheet, "A20", "Open Saturdays. Ask for {seller.name}.");
            var picture = book.addPicture(LOGO, Workbook.PICTURE_TYPE_PNG);
            sheet.createDrawingPatriarch().createPicture(new XSSFClientAnchor(0, 0, 0, 0, 2, 18, 3, 20), picture);
            set(book.createSheet("Ways to pay"), "A1", "Quote {quote.number}: card or cheque");
        });
        var quote = WetSwitches.quote();
        var choice = quote.choices().get(0);
        try (var book = new SheetBack(written(quote, layout))) {
            assertThat(book.sheets()).containsExactly("Overview", "Choice A", "Choice B", "Reasons", "Ways to pay");
            var sheet = book.sheet("Choice A");
            int first = sheet.lineRow("L1");
            int last = first + choice.lines().size() - 1;
            assertThat(sheet.cell(first, 1).getStringCellValue())
                    .isEqualTo(choice.lines().get(0).description());
            assertThat(sheet.cell(first, 2).getStringCellValue()).isEqualTo("2 each at $48.00");
            assertThat(sheet.cell(last, 10).getNumericCellValue())
                    .isEqualTo(choice.totals().subtotal().getAmount().doubleValue());
            assertThat(sheet.cell(first, 10).getNumericCellValue()).isEqualTo(96);
            assertThat(sheet.cell(last, 9).getCellFormula())
                    .isEqualTo("ROUND(G%1$d/SUM(G$%2$d:G$%1$d),6)".formatted(last + 1, first + 1));
            assertThat(sheet.text()).contains("Open Saturdays. Ask for Sandpiper Pool Heat.");
            assertThat(book.sheet("Ways to pay").text()).contains("Quote " + quote.number());
            for (var name : List.of("Choice A", "Choice B")) {
                var drawing = book.sheet(name).sheet().getDrawingPatriarch();
                var anchor = (XSSFClientAnchor) drawing.getShapes().get(0).getAnchor();
                int words = book.sheet(name).row(0, "Open Saturdays. Ask for Sandpiper Pool Heat.");
                assertThat(anchor.getRow1())
                        .as("the picture stands above the words")
                        .isEqualTo(words - 1);
            }
            assertThat(sheet.cents("Total")).isEqualTo(choice.totals().total());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        quote.xlsx   | Choice   | C5  | {row for each line}{line.colour}      | quote.xlsx, sheet Choice, cell C5: placeholder 'line.colour'
        quote.xlsx   | Choice   | C5  | {line.description}                    | quote.xlsx, sheet Choice, cell A5: placeholder {line.id} outside of its repetition
        quote.xlsx   | Choice   | C5  | {row for each line}                   | quote.xlsx, sheet Choice: placeholder {line.description} 'nothing'
        quote.xlsx   | Choice   | G5  | by hand                               | quote.xlsx, sheet Choice: placeholder {line.net} 'nothing'
        quote.xlsx   | Choice   | A1  | {choice.name                          | quote.xlsx, sheet Choice, cell A1: brace
        quote.xlsx   | Choice   | A1  | {choice.name} {row for each friend}   | quote.xlsx, sheet Choice, cell A1: repetition for each 'friend'
        quote.xlsx   | Choice   | A3  | {row only if sunny}                   | quote.xlsx, sheet Choice, cell A3: condition 'sunny'
        quote.xlsx   | Choice   | A3  | {line.net}                            | quote.xlsx, sheet Choice, cell A3: placeholder {line.net} outside of its repetition
        quote.xlsx   | Choice   | A3  | {total}                               | quote.xlsx, sheet Choice, cell A3: placeholder 'total'
        quote.xlsx   | Overview | A10 | none                                  | -
        quote.xlsx   | Overview | B5  | none                                  | -
        quote.xlsx   | Overview | A14 | {row for each notice}                 | quote.xlsx, sheet Overview: placeholder {notice.words} 'nothing'
        quote.xlsx   | Overview | D17 | =Choice!G14                           | quote.xlsx, sheet Overview: placeholder {choice.total} 'nothing'
        quote.xlsx   | Choice   | A3  | =G5+N("{line.colour}")                | quote.xlsx, sheet Choice, cell A3: placeholder 'line.colour'
        quote.xlsx   | Choice   | A3  | =IF(H5="{words.yess}",1,2)            | quote.xlsx, sheet Choice, cell A3: placeholder 'words.yess'
        invoice.xlsx | Invoice  | A1  | {title}                               | invoice.xlsx, sheet Invoice: placeholder {invoice.number} 'nothing'
        """)
    void whatCannotBeFilledIsRefusedWithFileSheetAndCell(
            String file, String sheet, String cell, String text, String told) {
        if (told.equals("-")) {
            assertThat(changed(file, book -> set(book.getSheet(sheet), cell, text)))
                    .isNotNull();
            return;
        }
        assertThatThrownBy(() -> changed(file, book -> set(book.getSheet(sheet), cell, text)))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith(told)
                .satisfies(refusal -> assertThat(refusal.getMessage().lines()).hasSize(1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        G5  | =D5*F5*1.01+N("{line.net}")       | sheet Choice, cell G5: result of =D5*F5*1.01 '96.96' is refused; allowed: 96.00, the stored line.net
        G7  | =SUM(G5)*2+N("{sum.subtotal}")    | sheet Choice, cell G7: result of =SUM(G5:G8)*2
        G14 | =G7+N("{sum.total}")              | sheet Choice, cell G14: result of =G10
        G14 | =C5+N("{sum.total}")              | sheet Choice, cell G14: formula '=C5:C8' is refused; allowed: one that gives a value, not #VALUE!
        A3  | =1/0                              | sheet Choice, cell A3: formula '=1/0' is refused; allowed: one that gives a value, not #DIV/0!
        """)
    void aFormulaThatComesToOtherThanTheStoredCentsIsRefused(String cell, String formula, String told) {
        var layout = changed("quote.xlsx", book -> set(book.getSheet("Choice"), cell, formula));
        assertThatThrownBy(() -> written(WetSwitches.quote(), layout))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("quote.xlsx, " + told);
    }

    @Test
    void aSheetThatIsWrittenForEachChoiceCanOnlyBeAskedFromARowForEach() {
        var layout = changed("quote.xlsx", book -> set(book.getSheet("Overview"), "A3", "=Choice!G14"));
        assertThatThrownBy(() -> written(WetSwitches.quote(), layout))
                .hasMessageStartingWith("quote.xlsx, sheet Overview, cell A3: reference to sheet 'Choice' is refused");
    }

    @Test
    void anAmountLeftWithoutRoundingIsRefusedOnceItMatters() {
        var layout = changed("quote.xlsx", book -> set(book.getSheet("Choice"), "G5", "=D5*F5+N(\"{line.net}\")"));
        assertThat(written(WetSwitches.quote(), layout)).isNotEmpty();
        var c = WetSwitches.quote().choices().get(0);
        var lines = new ArrayList<>(c.lines());
        lines.set(0, Papers.line("L1", fairflame.quote.LineKind.PART, "Odd", "0.333", "each", "48.00", true));
        var quote = RandomQuotes.of(lines);
        assertThatThrownBy(() -> written(quote, layout))
                .hasMessageContaining(
                        "cell G5: result of =D5*F5 '15.984' is refused; allowed: 15.98, the stored line.net");
    }

    @Test
    void wordsThatLookLikeFormulasStayWords() throws IOException {
        var lines = new ArrayList<Line>();
        var hostile = List.of(
                "=HYPERLINK(\"http://evil.example\",\"x\")",
                "+1+1",
                "-2+3",
                "@SUM(A1)",
                "{sum.total}",
                "{row only if x}");
        for (var words : hostile) {
            lines.add(Papers.line(
                    "L" + (lines.size() + 1), fairflame.quote.LineKind.PART, words, "1", "each", "2.00", true));
        }
        try (var book = new SheetBack(written(RandomQuotes.of(lines), Papers.sheets()))) {
            var sheet = book.sheet("Choice A");
            for (int i = 0; i < hostile.size(); i++) {
                var cell = sheet.cell(sheet.lineRow("L" + (i + 1)), 2);
                assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
                assertThat(cell.getStringCellValue()).isEqualTo(hostile.get(i));
                assertThat(cell.getCellStyle().getQuotePrefixed()).isEqualTo(i < 4);
            }
        }
    }

    @Test
    void aFileThatIsNoSpreadsheetIsRefusedByName() {
        for (var content : List.of(new byte[0], "number,price".getBytes(StandardCharsets.UTF_8), new byte[5_000_000])) {
            var files = new java.util.HashMap<>(files(SHIPPED));
            files.put("invoice.xlsx", content);
            assertThatThrownBy(() -> SheetTemplates.parse(files))
                    .isInstanceOf(Refusal.class)
                    .hasMessageStartingWith("invoice.xlsx: ");
        }
        assertThatThrownBy(() -> changed("quote.xlsx", book -> book.removeSheetAt(book.getSheetIndex("Choice"))))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> SheetTemplates.parse(Map.of())).hasMessageContaining("spreadsheet quote.xlsx");
    }

    @Test
    void theReasonsMayBeLeftOut() throws IOException {
        var layout = changed("quote.xlsx", book -> book.removeSheetAt(book.getSheetIndex("Reasons")));
        try (var book = new SheetBack(written(WetSwitches.quote(), layout))) {
            assertThat(book.sheets()).containsExactly("Overview", "Choice A", "Choice B");
        }
    }
}
