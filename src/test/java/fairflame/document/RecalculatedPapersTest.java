package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import fairflame.document.page.PageFormat;
import fairflame.invoice.Invoice;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.SplitPapers;
import fairflame.quote.TaxAmount;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/**
 * Invoices, part bills and credit notes of every shape (layers, roundings, discounts, payments) as LibreOffice Calc
 * 7.4.7.2 computed their spreadsheets, against the stored cents. How the files were made stands beside them.
 */
class RecalculatedPapersTest {
    private static final Path SHEETS = Path.of("src/test/resources/fairflame/document/recalculated/papers");
    private static final int PAPERS = 40;

    private static List<Invoice> papers() {
        var papers = new ArrayList<Invoice>();
        for (long seed = 100; papers.size() < PAPERS; seed++) {
            var random = new Random(seed);
            papers.addAll(SplitPapers.of(random));
            var other = new RandomInvoices(random);
            papers.addAll(List.of(other.next(1), other.next(2), other.next(3)));
        }
        return papers.subList(0, PAPERS);
    }

    @Test
    void everySpreadsheetComesToTheStoredCentsInAnotherOfficeProgram() throws IOException {
        var papers = papers();
        var folder = System.getProperty("papers.write", "");
        if (!folder.isEmpty()) {
            Files.createDirectories(Path.of(folder));
            for (int i = 0; i < papers.size(); i++) {
                var layout = Papers.sheets().invoice();
                Files.write(
                        Path.of(folder, "p" + i + ".xlsx"),
                        InvoiceXlsx.write(papers.get(i), Papers.text(), PageFormat.LETTER, layout));
            }
            fail("wrote the spreadsheets to " + folder + "; recalculate them and run again without the switch");
        }
        for (int i = 0; i < papers.size(); i++) {
            agree("p" + i, papers.get(i));
        }
    }

    private static void agree(String name, Invoice paper) throws IOException {
        var title = Papers.text().say(InvoicePdf.title(paper.kind())).replace(' ', '-');
        var rows = rows(SHEETS.resolve(name + "-" + title + ".csv"));
        var totals = paper.totals();
        var balance = paper.balance().isNegative() ? "Credit to you" : "Balance due";
        assertThat(behind(rows, "Subtotal")).as(name).isEqualTo(plain(totals.subtotal()));
        assertThat(behind(rows, "Tax"))
                .as(name)
                .isEqualTo(plain(totals.taxes().stream().map(TaxAmount::amount).toArray(Money[]::new)));
        assertThat(behind(rows, "Total")).as(name).isEqualTo(plain(totals.total()));
        assertThat(behind(rows, balance))
                .as(name)
                .isEqualTo(plain(paper.balance().abs()));
    }

    private static List<String> plain(Money... amounts) {
        return Arrays.stream(amounts)
                .map(Money::getAmount)
                .map(RecalculatedPapersTest::plain)
                .toList();
    }

    private static String plain(BigDecimal amount) {
        return amount.setScale(2).toPlainString();
    }

    private static List<String[]> rows(Path file) throws IOException {
        try (MappingIterator<String[]> rows = new CsvMapper()
                .readerFor(String[].class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .readValues(Files.readString(file))) {
            return rows.readAll();
        }
    }

    /** The amounts that stand in the sixth column behind a word in the fifth, as exact as the program left them. */
    private static List<String> behind(List<String[]> rows, String word) {
        return rows.stream()
                .filter(row -> row.length > 6 && row[5].equals(word) && row[6].matches("-?\\d+(\\.\\d+)?"))
                .map(row -> plain(new BigDecimal(row[6])))
                .toList();
    }
}
