package fairflame.gas;

import fairflame.Refusal;
import fairflame.gas.Capacity.Basis;
import fairflame.gas.CapacityTable.Between;
import fairflame.gas.CapacityTable.Beyond;
import fairflame.gas.CapacityTable.Cell;
import fairflame.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;

/** Finds the table row or the equation that sizes a run; the safer one where both speak. */
final class TableOrEquation {
    // The low-pressure tables lie 0.5 to 1.0 % below the equation and round to three digits; a row further above the
    // equation than this, and than one unit of its last digit, disagrees with it.
    private static final double AGREES = 0.017;
    // Tables 402.4(5) and (7) lie up to 14 % below the high-pressure equation: PrintedTablesTest.
    private static final double ELEVATED_STEEL = 0.86;

    // Forgives the last bit of a conversion, such as 18.288 m for 60 ft.
    private static final double SAME_LENGTH = 1e-9;

    private final GasTables tables;
    private final boolean nextLongerRow;

    TableOrEquation(GasTables tables, boolean nextLongerRow) {
        this.tables = tables;
        this.nextLongerRow = nextLongerRow;
    }

    Capacity capacity(Run run) {
        tables.known(run.pipe());
        var table = tables.table(run.gas().fuel(), run.pipe().material(), run.inlet(), run.drop());
        if (table.isEmpty()) {
            return byEquation(run, "", List.of());
        }
        return switch (table.get().reading().use()) {
            case ROWS -> byRows(run, table.get());
            case EQUATION -> byEquation(run, "", List.of(table.get().warning()));
            case DERIVED -> derived(run, table.get());
        };
    }

    private Capacity byRows(Run run, CapacityTable table) {
        var column = table.column(run.pipe().size());
        if (column.isEmpty()) {
            return withoutColumn(run, table);
        }
        var feet = run.length().feet();
        var row = column.get().ceilingEntry(feet * (1 - SAME_LENGTH));
        if (row != null && row.getKey() <= feet * (1 + SAME_LENGTH)) {
            return printed(run, table, row.getKey(), row.getValue());
        }
        if (feet > column.get().lastKey()) {
            return beyond(run, table, column.get());
        }
        return nextLongerRow || table.reading().between() == Between.ROW
                ? printed(
                        run,
                        table,
                        column.get().higherKey(feet),
                        column.get().higherEntry(feet).getValue())
                : between(run, table, column.get());
    }

    private Capacity withoutColumn(Run run, CapacityTable table) {
        if (table.reading().beyond() == Beyond.HALF_POWER) {
            return lessMargin(run, table);
        }
        return byEquation(
                run, "", List.of(table.id() + " has no column for " + run.pipe().words()));
    }

    /** The printed number, unless the equation allows clearly less. */
    private Capacity printed(Run run, CapacityTable table, double rowFeet, Cell cell) {
        var factor = gravityFactor(run);
        var by = "table " + table.id() + ", row of " + Figures.plain(rowFeet) + " ft" + gravityWords(run, factor);
        var notes = new ArrayList<String>();
        notes.add(table.edition() + "; row seen in: " + cell.source());
        if (!table.warning().isEmpty()) {
            notes.add(table.warning());
        }
        var print = cell.cubicFeetPerHour() * factor;
        if (run.pipe().material() != Material.CSST) {
            var computed = computed(run.longBy(Length.ofFeet(rowFeet)));
            // A table that the equation is known not to follow is looked up, whatever the equation says.
            var follows = table.reading().between() == Between.EQUATION;
            if (follows && print > computed * (1 + AGREES) && print > computed + cell.lastDigit()) {
                return equationIsSafer(run, by, print, notes);
            }
            notes.add("the equation reads " + Figures.cfh(computed) + " at " + Figures.plain(rowFeet) + " ft");
        }
        return Capacity.of(run, print, Basis.TABLE, by, notes);
    }

    private Capacity equationIsSafer(Run run, String row, double print, List<String> notes) {
        var all = new ArrayList<>(notes);
        all.add(row + " prints " + Figures.cfh(print) + ", clearly more than the equation: not used");
        return byEquation(run, ", safer than " + row, all);
    }

    /** Between two rows of a table that the equation follows: the equation, held between the two. */
    private Capacity between(Run run, CapacityTable table, NavigableMap<Double, Cell> column) {
        var factor = gravityFactor(run);
        var computed = computed(run);
        var feet = run.length().feet();
        var longer = column.higherEntry(feet);
        var shorter = column.lowerEntry(feet);
        if (shorter != null && computed > shorter.getValue().cubicFeetPerHour() * factor) {
            return printed(run, table, shorter.getKey(), shorter.getValue());
        }
        if (computed < longer.getValue().cubicFeetPerHour() * factor) {
            return printed(run, table, longer.getKey(), longer.getValue());
        }
        return byEquation(run, "", List.of(table.id() + " has no row of " + Figures.feet(run.length())));
    }

    private Capacity beyond(Run run, CapacityTable table, NavigableMap<Double, Cell> column) {
        var last = column.lastEntry();
        return switch (table.reading().beyond()) {
            case REFUSE ->
                throw Refusal.outOfRange(
                        "length of " + run.pipe().words(),
                        Figures.feet(run.length()),
                        "up to " + Figures.plain(last.getKey()) + " ft, the last row of " + table.id()
                                + "; beyond it use the maker's table");
            case HALF_POWER -> extrapolated(run, table, last.getKey(), last.getValue());
            case EQUATION ->
                computed(run) > last.getValue().cubicFeetPerHour() * gravityFactor(run)
                        ? printed(run, table, last.getKey(), last.getValue())
                        : byEquation(run, "", List.of(table.id() + " ends at " + Figures.plain(last.getKey()) + " ft"));
        };
    }

    private Capacity extrapolated(Run run, CapacityTable table, double lastFeet, Cell last) {
        var feet = run.length().feet();
        var power = last.cubicFeetPerHour() * gravityFactor(run) * Math.sqrt(lastFeet / feet);
        var margin = computed(run) * ELEVATED_STEEL;
        if (margin < power) {
            return lessMargin(run, table);
        }
        var by = "table " + table.id() + " extrapolated past its row of " + Figures.plain(lastFeet)
                + " ft by the square root of the lengths";
        return Capacity.of(
                run,
                power,
                Basis.EXTRAPOLATED,
                by,
                List.of("the equation less 14 % would allow " + Figures.cfh(margin), table.warning()));
    }

    private Capacity lessMargin(Run run, CapacityTable table) {
        var by = run.equation().words() + " (IFGC 402.4) less 14 %, because it does not follow table " + table.id();
        return Capacity.of(run, computed(run) * ELEVATED_STEEL, Basis.EXTRAPOLATED, by, List.of(table.warning()));
    }

    private Capacity derived(Run run, CapacityTable rule) {
        var table =
                tables.table(rule.from()).orElseThrow(() -> Refusal.unknown("table", rule.from(), "a table at hand"));
        var size = run.pipe().size();
        var column = table.column(size);
        if (rule.except().contains(size) || column.isEmpty()) {
            throw Refusal.notAllowed(
                    run.gas().fuel().word() + " capacity of " + run.pipe().words(),
                    rule.id(),
                    "use the maker's table: the printed propane figures of this size do not follow the gravity ratio");
        }
        var row = column.get().ceilingEntry(run.length().feet() * (1 - SAME_LENGTH));
        if (row == null) {
            return beyond(run, table, column.get());
        }
        var factor = tables.gravityMultiplier(run.gas().specificGravity());
        var by = "derived: table " + table.id() + ", row of " + Figures.plain(row.getKey()) + " ft, times "
                + Figures.plain(factor) + " for specific gravity "
                + Figures.plain(run.gas().specificGravity())
                + " (Table A.2.4)";
        return Capacity.of(run, row.getValue().cubicFeetPerHour() * factor, Basis.DERIVED, by, List.of(rule.warning()));
    }

    private Capacity byEquation(Run run, String more, List<String> notes) {
        var bore = tables.bore(run.pipe()).orElseThrow(() -> noCsstTable(run));
        var by = String.format(
                java.util.Locale.ROOT,
                "%s (IFGC 402.4), inside diameter %.3f in%s",
                run.equation().words(),
                bore.inches(),
                more);
        var all = new ArrayList<>(notes);
        codeCopper(run).ifPresent(all::add);
        return Capacity.of(run, computed(run), Basis.EQUATION, by, all);
    }

    // 2018 IFGC Table A.5.2: the printed copper tables stand for both types and take the narrower bore of type K.
    private Optional<String> codeCopper(Run run) {
        if (run.pipe().material() != Material.COPPER_L) {
            return Optional.empty();
        }
        var narrower =
                tables.bore(new Pipe(Material.COPPER_K, run.pipe().size())).orElseThrow();
        var less =
                run.equation().flow(run.gas(), narrower.inches(), run.length().feet(), run.allowedLoss());
        return Optional.of("the code's printed copper tables take the bore of type K for both types and allow less, "
                + Figures.cfh(less) + ": keep to it where the inspector sizes by the table");
    }

    private Refusal noCsstTable(Run run) {
        var asked = run.gas().fuel().word() + ", inlet " + Figures.pressure(run.inlet()) + ", drop "
                + Figures.pressure(run.drop());
        return Refusal.notAllowed(
                "CSST at " + asked,
                run.pipe().words(),
                "inlet below 2 psi with a drop of 0.5 in w.c.; no equation holds for CSST: use the maker's table");
    }

    private double computed(Run run) {
        var bore = tables.bore(run.pipe()).orElseThrow(() -> noCsstTable(run));
        return run.equation().flow(run.gas(), bore.inches(), run.length().feet(), run.allowedLoss());
    }

    /** Printed capacities hold for the gravity of the code's gas; another one takes the ratio of the multipliers. */
    private double gravityFactor(Run run) {
        var gas = run.gas();
        return gas.specificGravity() == gas.codeGravity()
                ? 1
                : tables.gravityMultiplier(gas.specificGravity()) / tables.gravityMultiplier(gas.codeGravity());
    }

    private static String gravityWords(Run run, double factor) {
        return factor == 1
                ? ""
                : ", times " + Figures.plain(factor) + " for specific gravity "
                        + Figures.plain(run.gas().specificGravity()) + " (Table A.2.4)";
    }
}
