package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import fairflame.money.Amounts;
import fairflame.quote.TaxAmount;
import fairflame.quote.Totals;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo's spreadsheets as LibreOffice Calc 7.4.7.2 computed them, against the cents that the program stores. How the
 * files were made stands beside them.
 */
class RecalculatedSheetsTest {
    private static final Path SHEETS = Path.of("src/test/resources/fairflame/document/recalculated");

    @TempDir
    private static Path folder;

    @BeforeAll
    static void theDemo() {
        new Demo(folder, line -> {}).run();
    }

    private static List<String[]> rows(String name) throws IOException {
        try (MappingIterator<String[]> rows = new CsvMapper()
                .readerFor(String[].class)
                .with(CsvParser.Feature.WRAP_AS_ARRAY)
                .readValues(Files.readString(SHEETS.resolve(name)))) {
            return rows.readAll();
        }
    }

    /** The amounts that stand behind a word. */
    private static List<BigDecimal> behind(List<String[]> rows, String word) {
        var found = new ArrayList<BigDecimal>();
        for (var row : rows) {
            var at = Arrays.asList(row).indexOf(word);
            if (at >= 0 && at + 1 < row.length && row[at + 1].matches("-?\\d+(\\.\\d+)?")) {
                found.add(new BigDecimal(row[at + 1]));
            }
        }
        return found;
    }

    private static void agree(String name, Totals totals) throws IOException {
        var rows = rows(name);
        var taxes = totals.taxes().stream()
                .map(TaxAmount::amount)
                .map(Money::getAmount)
                .toList();
        assertThat(behind(rows, "Subtotal"))
                .as(name)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(totals.subtotal().getAmount());
        assertThat(behind(rows, "Tax"))
                .as(name)
                .usingElementComparator(BigDecimal::compareTo)
                .isEqualTo(taxes);
        assertThat(behind(rows, "Total"))
                .as(name)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(totals.total().getAmount());
    }

    @Test
    void everyChoiceOfEveryQuoteComesToTheStoredCents() throws IOException {
        try (var shop = Workplace.open(folder, Library.load(Sources.samples()), Clock.systemUTC(), "Ida Quill")) {
            var quotes = shop.store()
                    .reading(records -> records.quotes().rows().stream()
                            .map(row -> records.quotes().latest(row.number()).orElseThrow())
                            .toList());
            var sheets = 0;
            for (var quote : quotes) {
                var letter = 'A';
                for (var choice : quote.choices()) {
                    agree(quote.number() + "-Choice-" + letter++ + ".csv", choice.totals());
                    sheets++;
                }
            }
            assertThat(sheets).isEqualTo(5);
        }
    }

    @Test
    void everyInvoiceComesToTheStoredCentsAndToNothingOnceItIsPaid() throws IOException {
        try (var shop = Workplace.open(folder, Library.load(Sources.samples()), Clock.systemUTC(), "Ida Quill")) {
            for (var invoice : shop.store().reading(Accounts::papers)) {
                var name = invoice.number() + "-Invoice.csv";
                agree(name, invoice.totals());
                assertThat(behind(rows(name), "Balance due"))
                        .as(name)
                        .singleElement()
                        .satisfies(balance -> assertThat(balance)
                                .isEqualByComparingTo(Amounts.plain(Money.zero(invoice.currency()))));
            }
        }
    }
}
