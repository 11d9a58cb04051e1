package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** How far the sizing equation lies from each printed table: the figures of docs/gas-methods.md. */
class EquationDeviationTest {
    private record Cell(String size, double feet, double excess, boolean within) {}

    @Test
    void theDocumentPrintsTheDeviationOfEachTable() throws IOException {
        var document = Files.readString(Path.of("docs/gas-methods.md"));
        var lines = Sites.TABLES
                .tables()
                .filter(table -> !table.rows().isEmpty() && table.conditions().material() != Material.CSST)
                .map(EquationDeviationTest::line)
                .toList();
        assertThat(document).contains(lines);
    }

    private static String line(CapacityTable table) {
        var cells = new ArrayList<Cell>();
        table.rows()
                .forEach((size, column) -> column.forEach((feet, cell) -> {
                    var conditions = table.conditions();
                    var run = new Run(
                            Gas.ofCode(conditions.fuel()),
                            new Pipe(conditions.material(), size),
                            Length.ofFeet(feet),
                            conditions.below() ? Pressure.ofInchesWater(7) : conditions.inlet(),
                            conditions.drop());
                    var bore = Sites.TABLES.bore(run.pipe()).orElseThrow().inches();
                    var computed = run.equation().flow(run.gas(), bore, feet, run.allowedLoss());
                    var printed = cell.cubicFeetPerHour();
                    var within = Math.abs(computed / printed - 1) <= 0.017
                            || Math.abs(computed - printed) <= cell.lastDigit();
                    cells.add(new Cell(size, feet, 100 * (computed / printed - 1), within));
                }));
        return words(table.id(), cells);
    }

    private static String words(String table, List<Cell> cells) {
        var order = Comparator.comparingDouble(Cell::excess)
                .thenComparing(Cell::size)
                .thenComparingDouble(Cell::feet);
        var least = cells.stream().min(order).orElseThrow();
        var most = cells.stream().max(order).orElseThrow();
        return String.format(
                Locale.ROOT,
                "| %s | %d | %+.2f %% | %+.2f %% (%s in, %.0f ft) | %+.2f %% (%s in, %.0f ft) | %d |",
                table,
                cells.size(),
                cells.stream().mapToDouble(Cell::excess).average().orElseThrow(),
                least.excess(),
                least.size(),
                least.feet(),
                most.excess(),
                most.size(),
                most.feet(),
                cells.stream().filter(cell -> !cell.within()).count());
    }
}
