package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.quote.Line;
import fairflame.quote.Totals;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** A written spreadsheet, read back; its formulas are worked out anew by the spreadsheet engine. */
final class SheetBack implements AutoCloseable {
    private static final int NET = 6;

    private final XSSFWorkbook book;
    private final FormulaEvaluator engine;

    SheetBack(byte[] file) throws IOException {
        book = new XSSFWorkbook(new ByteArrayInputStream(file));
        engine = book.getCreationHelper().createFormulaEvaluator();
    }

    @Override
    public void close() throws IOException {
        book.close();
    }

    List<String> sheets() {
        var names = new ArrayList<String>();
        book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
        return names;
    }

    Tab sheet(String name) {
        var sheet = book.getSheet(name);
        assertThat(sheet).as("sheet %s among %s", name, sheets()).isNotNull();
        return new Tab(sheet, engine, name);
    }

    record Tab(XSSFSheet sheet, FormulaEvaluator engine, String what) {
        Tab saying(String more) {
            return new Tab(sheet, engine, what + ", " + more);
        }

        String text() {
            var all = new StringBuilder();
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        all.append(cell.getStringCellValue()).append('\n');
                    }
                }
            }
            return all.toString();
        }

        int row(int column, String words) {
            for (Row row : sheet) {
                var cell = row.getCell(column);
                if (cell != null
                        && cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(words)) {
                    return row.getRowNum();
                }
            }
            throw new AssertionError(what + ": no row with " + words);
        }

        int lineRow(String id) {
            return row(0, id);
        }

        Cell cell(int row, int column) {
            return sheet.getRow(row).getCell(column);
        }

        void set(int row, int column, double value) {
            cell(row, column).setCellValue(value);
            engine.clearAllCachedResultValues();
        }

        private Money worked(Cell cell) {
            var value = engine.evaluate(cell);
            assertThat(value.getCellType())
                    .as("%s: %s", what, cell.getAddress())
                    .isEqualTo(CellType.NUMERIC);
            var exact = new BigDecimal(value.getNumberValue());
            var cents = exact.setScale(2, RoundingMode.HALF_EVEN);
            // What the engine holds is the cents and nothing beside them.
            assertThat(cents.subtract(exact).abs().doubleValue())
                    .as("%s: %s holds %s", what, cell.getAddress(), exact)
                    .isLessThan(1e-7);
            return Money.of(CurrencyUnit.USD, cents);
        }

        Money cents(String label) {
            return worked(cell(row(5, label), NET));
        }

        void assertSame(List<Line> lines, Totals totals) {
            for (var line : lines) {
                var cell = cell(lineRow(line.id()), NET);
                assertThat(cell.getCellType()).isEqualTo(CellType.FORMULA);
                assertThat(worked(cell)).as("%s: net of %s", what, line).isEqualTo(line.net());
            }
            assertThat(cents("Subtotal")).as("%s: subtotal", what).isEqualTo(totals.subtotal());
            if (!totals.discount().isZero()) {
                assertThat(cents("Discount"))
                        .as("%s: discount", what)
                        .isEqualTo(totals.discount().negated());
            }
            for (var tax : totals.taxes()) {
                int row = row(2, tax.name());
                assertThat(cell(row, NET).getCellType()).isEqualTo(CellType.FORMULA);
                assertThat(worked(cell(row, 3))).as("%s: base of %s", what, tax).isEqualTo(tax.base());
                assertThat(worked(cell(row, NET)))
                        .as("%s: amount of %s", what, tax)
                        .isEqualTo(tax.amount());
            }
            assertThat(cents("Total")).as("%s: total", what).isEqualTo(totals.total());
        }
    }
}
