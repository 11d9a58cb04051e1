package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import fairflame.invoice.RandomInvoices;
import fairflame.invoice.books.Books;
import fairflame.invoice.books.Chart;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class JournalCsvTest {
    /** Read back with Jackson's reader, which had no part in writing. */
    @Test
    void everyEntryBalancesToZeroWhenReadBack() throws IOException {
        var random = new RandomInvoices(new Random(23));
        var invoice = random.full(1, "Q-2026-0001", LocalDate.of(2026, 3, 2));
        var note = random.credit(invoice, "C-2026-0001", LocalDate.of(2026, 3, 9));
        var chart = Chart.parse(Files.readString(Path.of("catalog-sample/accounts.csv")));
        var csv = JournalCsv.write(Books.journal(chart, List.of(invoice, note), List.of()));
        var sums = new HashMap<String, BigDecimal>();
        try (MappingIterator<Map<String, String>> rows = new CsvMapper()
                .readerForMapOf(String.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(csv)) {
            while (rows.hasNextValue()) {
                var row = rows.nextValue();
                sums.merge(
                        row.get("entry"),
                        number(row.get("debit")).subtract(number(row.get("credit"))),
                        BigDecimal::add);
                assertThat(row.get("currency")).isEqualTo("USD");
                assertThat(row.get("debit").isEmpty())
                        .isNotEqualTo(row.get("credit").isEmpty());
            }
        }
        assertThat(sums).hasSize(2);
        assertThat(sums.values()).allSatisfy(sum -> assertThat(sum).isEqualByComparingTo("0"));
    }

    private static BigDecimal number(String text) {
        return text.isEmpty() ? BigDecimal.ZERO : new BigDecimal(text);
    }

    @Test
    void quotesWhatNeedsQuotesAndDisarmsFormulas() {
        assertThat(CsvText.row(List.of("a,b", "say \"x\"", "=1+1", "-4.50", "-x", "@a")))
                .isEqualTo("\"a,b\",\"say \"\"x\"\"\",'=1+1,-4.50,'-x,'@a\r\n");
    }
}
