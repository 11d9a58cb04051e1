package fairflame.gas;

import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;

/**
 * One capacity table with the rule by which it is read; the words of the rule are explained in {@code tables.csv}.
 *
 * @param id number of the table, such as {@code IFGC 402.4(2)}
 * @param from the table that a derived one takes its rows from; empty otherwise
 * @param except sizes that a derived table leaves out
 * @param warning said with every answer from this table; empty for none
 * @param rows by size, then by length in feet
 */
record CapacityTable(
        String id,
        String edition,
        Conditions conditions,
        Reading reading,
        String from,
        Set<String> except,
        String warning,
        Map<String, NavigableMap<Double, Cell>> rows) {

    /** How the rows are used: which rule holds at all, between two rows, and past the last one. */
    record Reading(Use use, Between between, Beyond beyond) {
        /** For a table that comes without a rule: the cautious one of its kind. */
        static Reading unstated(Conditions conditions) {
            if (conditions.material() == Material.CSST) {
                return new Reading(Use.ROWS, Between.ROW, Beyond.REFUSE);
            }
            return conditions.equation() == FlowEquation.LOW
                    ? new Reading(Use.ROWS, Between.EQUATION, Beyond.EQUATION)
                    : new Reading(Use.ROWS, Between.ROW, Beyond.HALF_POWER);
        }
    }

    enum Use {
        ROWS,
        EQUATION,
        DERIVED
    }

    enum Between {
        EQUATION,
        ROW
    }

    enum Beyond {
        EQUATION,
        HALF_POWER,
        REFUSE
    }

    /** A printed capacity in cubic feet per hour and where it was seen. */
    record Cell(double cubicFeetPerHour, String source) {
        /** One unit of the last printed digit: three significant digits, whole numbers below 100. */
        double lastDigit() {
            return cubicFeetPerHour < 100 ? 1 : Math.pow(10, Math.floor(Math.log10(cubicFeetPerHour)) - 2);
        }
    }

    Optional<NavigableMap<Double, Cell>> column(String size) {
        return Optional.ofNullable(rows.get(size));
    }

    CapacityTable withRows(Map<String, NavigableMap<Double, Cell>> others) {
        return new CapacityTable(id, edition, conditions, reading, from, except, warning, others);
    }

    CapacityTable warned(String words) {
        return new CapacityTable(id, edition, conditions, reading, from, except, words, rows);
    }
}
