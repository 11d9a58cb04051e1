package fairflame.gas;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import fairflame.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Rows of a CSV text with a header line; lines that begin with # are remarks. */
final class CsvRows {
    private static final CsvMapper MAPPER = CsvMapper.builder()
            .enable(CsvParser.Feature.ALLOW_COMMENTS)
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.FAIL_ON_MISSING_HEADER_COLUMNS)
            .build();

    private CsvRows() {}

    /** Reads all rows; every column named must be in the header. Refusals name the text and the line. */
    static List<Row> read(String name, String csv, String... columns) {
        var rows = new ArrayList<Row>();
        try (MappingIterator<Map<String, String>> lines = MAPPER.readerFor(Map.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(csv)) {
            while (lines.hasNextValue()) {
                var cells = lines.nextValue();
                var line = lines.getCurrentLocation().getLineNr() - 1;
                rows.add(new Row(name + " line " + line, Map.copyOf(cells)));
            }
        } catch (IOException e) {
            throw Refusal.malformed("table text", firstLine(e), "comma-separated lines under one header line")
                    .at(name);
        }
        if (rows.isEmpty()) {
            throw Refusal.missing("rows", "at least one row under the header " + String.join(",", columns))
                    .at(name);
        }
        for (var column : columns) {
            if (!rows.get(0).cells.containsKey(column)) {
                throw Refusal.missing("column " + column, String.join(", ", columns))
                        .at(name);
            }
        }
        return rows;
    }

    private static String firstLine(IOException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("unreadable");
    }

    /** One line: its place for a message and its cells by column name. */
    record Row(String place, Map<String, String> cells) {
        String optional(String column) {
            return cells.getOrDefault(column, "");
        }

        String text(String column) {
            var text = optional(column);
            if (text.isEmpty()) {
                throw Refusal.missing(column, "a value in every row").at(place);
            }
            return text;
        }

        boolean yes(String column) {
            return switch (text(column)) {
                case "yes" -> true;
                case "no" -> false;
                default ->
                    throw Refusal.unknown(column, text(column), "yes, no").at(place);
            };
        }

        /** A plain number above zero. */
        double positive(String column) {
            var text = text(column);
            if (!text.matches("\\d{1,9}(\\.\\d{1,6})?") || Double.parseDouble(text) <= 0) {
                throw Refusal.malformed(column, text, "a plain number above 0").at(place);
            }
            return Double.parseDouble(text);
        }
    }
}
