package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Every row of every table that comes with the program. Sources stand in the rows: IFGC 402.4(1), (2), (5), (7), (15) in
 * the numbering of 2012 to 2018.
 */
class PrintedTablesTest {
    private final GasTables tables = GasTables.shipped();

    private record Row(CapacityTable table, String size, double feet, CapacityTable.Cell cell) {
        Run run() {
            var conditions = table.conditions();
            var inlet = conditions.below() ? Pressure.ofInchesWater(7) : conditions.inlet();
            return new Run(
                    Gas.ofCode(conditions.fuel()),
                    new Pipe(conditions.material(), size),
                    Length.ofFeet(feet),
                    inlet,
                    conditions.drop());
        }
    }

    private static String words(Row row) {
        return row.table().id() + " " + row.size() + " at " + row.feet() + " ft";
    }

    private List<Row> rows() {
        var rows = new ArrayList<Row>();
        tables.tables()
                .forEach(table -> table.rows()
                        .forEach((size, column) ->
                                column.forEach((feet, cell) -> rows.add(new Row(table, size, feet, cell)))));
        return rows;
    }

    @Test
    void allTablesAreThere() {
        var count = new TreeMap<String, Integer>();
        rows().forEach(row -> count.merge(row.table().id(), 1, Integer::sum));
        assertEquals(
                Map.of(
                        "IFGC 402.4(1)", 178,
                        "IFGC 402.4(2)", 177,
                        "IFGC 402.4(5)", 81,
                        "IFGC 402.4(7)", 81,
                        "IFGC 402.4(15)", 237),
                count);
    }

    @Test
    void everyRowIsAnsweredExactlyByItsTable() {
        for (var row : rows()) {
            var capacity = Capacity.of(tables, row.run());
            var where = words(row);
            assertEquals(row.cell().cubicFeetPerHour(), capacity.flow().cubicFeetPerHour(), 0, where);
            assertEquals(Capacity.Basis.TABLE, capacity.basis(), where);
            assertThat(capacity.by())
                    .isEqualTo("table " + row.table().id() + ", row of " + Figures.plain(row.feet()) + " ft");
        }
    }

    @Test
    void lowPressureRowsLieWithinTheToleranceOfTheEquation() {
        assertThat(disagreeing(19.17)).isEmpty();
    }

    @Test
    void theToleranceNoticesAConstantThatIsTwoPercentOff() {
        // 19.17 raised by 0.8 % carries 2.1 % more: a check that let this pass would prove nothing.
        assertThat(disagreeing(19.17 * 1.008)).hasSizeGreaterThan(150);
        assertThat(disagreeing(19.17 * 0.99)).hasSizeGreaterThan(20);
    }

    /** Low-pressure rows further from the equation than 1.7 % and one unit of the last printed digit. */
    private List<String> disagreeing(double constant) {
        var off = new ArrayList<String>();
        for (var row : rows()) {
            if (row.table().id().equals("IFGC 402.4(1)") || row.table().id().equals("IFGC 402.4(2)")) {
                var bore = tables.bore(row.run().pipe()).orElseThrow().inches();
                // The low-pressure equation of IFGC 402.4 written out, apart from the program's own.
                var computed = Math.pow(
                        constant * bore * Math.pow(row.run().drop().inchesWater() / (0.6094 * row.feet()), 0.206),
                        1 / 0.381);
                var printed = row.cell().cubicFeetPerHour();
                if (Math.abs(computed / printed - 1) > 0.017
                        && Math.abs(computed - printed) > row.cell().lastDigit()) {
                    off.add(words(row) + " computed " + computed);
                }
            }
        }
        return off;
    }

    @Test
    void theElevatedTablesDoNotFollowTheEquation() {
        var excess = new TreeMap<String, List<Double>>();
        for (var row : rows()) {
            if (!row.table().conditions().below()) {
                var bore = tables.bore(row.run().pipe()).orElseThrow().inches();
                var computed = FlowEquation.HIGH.flow(
                        row.run().gas(), bore, row.feet(), row.run().allowedLoss());
                excess.computeIfAbsent(row.table().id(), id -> new ArrayList<>())
                        .add(computed / row.cell().cubicFeetPerHour() - 1);
            }
        }
        // The same comparison made with another program when the figures were collected: mean 5.8 % and 3.9 %,
        // greatest 13.6 % and 11.7 %, least -3.1 % and -6.2 %.
        assertDeviation(excess, "IFGC 402.4(5)", 0.0579, -0.0309, 0.1360);
        assertDeviation(excess, "IFGC 402.4(7)", 0.0395, -0.0618, 0.1171);
    }

    private static void assertDeviation(
            Map<String, List<Double>> excess, String table, double mean, double least, double greatest) {
        var statistics = excess.getOrDefault(table, List.of()).stream()
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        assertThat(statistics.getAverage()).isCloseTo(mean, within(1e-4));
        assertThat(statistics.getMin()).isCloseTo(least, within(1e-4));
        assertThat(statistics.getMax()).isCloseTo(greatest, within(1e-4));
        // What the program takes off the equation covers the greatest overstatement.
        assertThat(1 / (1 + statistics.getMax())).isGreaterThan(0.86);
    }
}
