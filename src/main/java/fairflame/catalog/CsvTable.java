package fairflame.catalog;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import fairflame.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * A table in CSV (RFC 4180): a header line with the column names in any order, rows below it, empty rows passed over.
 */
final class CsvTable {
    private static final ObjectReader LINES =
            new CsvMapper().readerFor(String[].class).with(CsvParser.Feature.WRAP_AS_ARRAY);

    private CsvTable() {}

    /**
     * The rows of a file.
     *
     * @param required columns that have to be in the header
     * @param optional columns that may be there; any other column is refused, it is most likely misspelt
     */
    static List<CsvRow> rows(FileText file, List<String> required, List<String> optional) {
        var lines = lines(file);
        var header = Arrays.stream(lines.get(0)).map(String::strip).toList();
        checkHeader(file.name(), header, required, optional);
        var rows = new ArrayList<CsvRow>();
        for (int i = 1; i < lines.size(); i++) {
            if (!Arrays.stream(lines.get(i)).allMatch(String::isBlank)) {
                rows.add(row(file.name(), i + 1, header, lines.get(i)));
            }
        }
        if (rows.isEmpty()) {
            throw Refusal.missing("row below the header", "at least one row").at(file.name());
        }
        return rows;
    }

    private static List<String[]> lines(FileText file) {
        try (MappingIterator<String[]> iterator = LINES.readValues(file.text())) {
            return iterator.readAll();
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("table", e.getOriginalMessage(), "comma-separated values (RFC 4180)")
                    .at(file.name() + " line " + e.getLocation().getLineNr());
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory could not be read", e);
        }
    }

    private static void checkHeader(String file, List<String> header, List<String> required, List<String> optional) {
        var known = new ArrayList<>(required);
        known.addAll(optional);
        for (var column : required) {
            if (!header.contains(column)) {
                throw Refusal.missing("column " + column, "a header with " + String.join(", ", known))
                        .at(file + " row 1");
            }
        }
        for (var column : header) {
            if (!known.contains(column)) {
                throw Refusal.unknown("column", column, String.join(", ", known))
                        .at(file + " row 1");
            }
            if (header.indexOf(column) != header.lastIndexOf(column)) {
                throw Refusal.notAllowed("column", column, "each column once").at(file + " row 1");
            }
        }
    }

    private static CsvRow row(String file, int number, List<String> header, String[] cells) {
        if (cells.length > header.size()) {
            throw Refusal.malformed(
                            "row with " + cells.length + " cells", cells[header.size()], header.size() + " cells")
                    .at(file + " row " + number);
        }
        var named = new LinkedHashMap<String, String>();
        for (int i = 0; i < cells.length; i++) {
            named.put(header.get(i), cells[i]);
        }
        return new CsvRow(file, number, named);
    }
}
