package fairflame.bench;

import fairflame.catalog.Part;
import fairflame.catalog.upkeep.ColumnMapping;
import fairflame.catalog.upkeep.PriceListImport;
import fairflame.catalog.upkeep.Upkept;
import fairflame.store.By;
import fairflame.store.PriceSheetFile;
import fairflame.store.Store;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Times a supplier price list of 100,000 rows: reading, preview, taking over, undo. Run by hand; figures stand in
 * docs/measurements.md.
 */
final class PriceListTime {
    private static final int ROWS = 100_000;
    private static final PrintStream OUT = System.out;

    private PriceListTime() {}

    public static void main(String[] arguments) throws Exception {
        var folder = Files.createTempDirectory("price-list");
        var xlsx = workbook(folder.resolve("list.xlsx"));
        var csv = text(folder.resolve("list.csv"));
        var mapping = ColumnMapping.parse("tern", List.of("number=Item", "cost=Price", "description=Name"));
        var shelf = new ArrayList<Part>();
        for (int i = 0; i < ROWS; i += 2) {
            shelf.add(new Part(
                    "P-" + i,
                    "stock",
                    "",
                    "Part " + i,
                    false,
                    "each",
                    Money.ofMinor(CurrencyUnit.USD, 100 + i),
                    Optional.empty(),
                    "tern",
                    0,
                    "measured"));
        }
        var by = new By("measured", Instant.EPOCH);
        for (int round = 1; round <= 5; round++) {
            OUT.println("round " + round);
            timed("read csv", () -> PriceSheetFile.read(csv).rows().size());
            var sheet = timed("read xlsx", () -> PriceSheetFile.read(xlsx));
            var current = Upkept.of(shelf, List.of()).all();
            var preview = timed("preview", () -> PriceListImport.preview(sheet, mapping, CurrencyUnit.USD, current));
            try (var store = Store.open(folder.resolve("shop" + round + ".db"))) {
                var day = LocalDate.EPOCH;
                timed(
                        "take over",
                        () -> store.inTransaction(
                                by, records -> records.priceLists().take(preview, day)));
                timed(
                        "read states",
                        () -> store.reading(
                                records -> records.priceLists().states().size()));
                timed(
                        "undo",
                        () -> store.inTransaction(
                                by, records -> records.priceLists().undo(1, day)));
            }
        }
    }

    private static <T> T timed(String what, Callable<T> work) throws Exception {
        var start = System.nanoTime();
        var result = work.call();
        OUT.printf("  %-12s %5d ms%n", what, (System.nanoTime() - start) / 1_000_000);
        return result;
    }

    private static Path workbook(Path file) throws IOException {
        try (var book = new SXSSFWorkbook();
                var out = Files.newOutputStream(file)) {
            var sheet = book.createSheet();
            for (int i = 0; i <= ROWS; i++) {
                var row = sheet.createRow(i);
                row.createCell(0).setCellValue(i == 0 ? "Item" : "P-" + (i - 1));
                row.createCell(1).setCellValue(i == 0 ? "Name" : "Part " + (i - 1));
                if (i == 0) {
                    row.createCell(2).setCellValue("Price");
                } else {
                    row.createCell(2).setCellValue((105 + i) / 100.0);
                }
            }
            book.write(out);
        }
        return file;
    }

    private static Path text(Path file) throws IOException {
        var text = new StringBuilder("Item,Name,Price\n");
        for (int i = 0; i < ROWS; i++) {
            text.append("P-")
                    .append(i)
                    .append(",Part ")
                    .append(i)
                    .append(',')
                    .append((106 + i) / 100.0)
                    .append('\n');
        }
        return Files.writeString(file, text);
    }
}
