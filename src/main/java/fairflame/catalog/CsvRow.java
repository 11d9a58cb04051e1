package fairflame.catalog;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * One row of a table.
 *
 * @param number as a spreadsheet counts: the header is row 1
 * @param cells by column; a column without a cell in this row holds an empty text
 */
record CsvRow(String file, int number, Map<String, String> cells) {
    CsvRow {
        cells = Map.copyOf(cells);
    }

    String where() {
        return file + " row " + number;
    }

    /** Reads a cell, which has to be filled; a refusal names file, row and column. */
    <T> T read(String column, Function<String, T> as) {
        try {
            return as.apply(Fields.filled(cells.getOrDefault(column, "")));
        } catch (Refusal refusal) {
            throw refusal.at(where() + ", " + column);
        }
    }

    /** Reads a cell that may be empty. */
    <T> Optional<T> readIfFilled(String column, Function<String, T> as) {
        return cells.getOrDefault(column, "").isBlank() ? Optional.empty() : Optional.of(read(column, as));
    }

    String text(String column) {
        return read(column, text -> text);
    }

    String textOrEmpty(String column) {
        return readIfFilled(column, text -> text).orElse("");
    }

    String id(String column) {
        return read(column, Fields::id);
    }

    boolean flag(String column) {
        return read(column, Fields::flag);
    }

    BigDecimal decimal(String column, String lowest, String highest) {
        return read(column, text -> Fields.decimal(text, lowest, highest));
    }

    int whole(String column, int lowest, int highest) {
        return read(column, text -> Fields.whole(text, lowest, highest));
    }

    Money money(String column, CurrencyUnit currency) {
        return read(column, text -> Fields.money(text, currency));
    }

    List<String> words(String column) {
        return readIfFilled(column, Fields::words).orElse(List.of());
    }

    /** The refusal of a cell whose text is well formed but wrong here. */
    Refusal refused(String column, Refusal why) {
        return why.at(where() + ", " + column);
    }
}
