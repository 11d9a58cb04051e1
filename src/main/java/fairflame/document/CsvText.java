package fairflame.document;

import java.util.List;
import java.util.stream.Collectors;

/** Rows of CSV (RFC 4180) that a spreadsheet opens without running anything. */
final class CsvText {
    private CsvText() {}

    static String row(List<String> cells) {
        return cells.stream().map(CsvText::cell).collect(Collectors.joining(",")) + "\r\n";
    }

    /** Quoted where needed; text that a spreadsheet would take for a formula gets an apostrophe in front. */
    private static String cell(String text) {
        var number = text.matches("-?\\d+(\\.\\d+)?");
        var safe = !number && text.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }
}
