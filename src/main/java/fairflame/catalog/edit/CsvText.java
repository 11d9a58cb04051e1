package fairflame.catalog.edit;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A table in CSV (RFC 4180) of which single cells and rows are changed. The first column is the key of a row. */
public final class CsvText implements ShopText {
    private final String file;
    private final String text;
    private final List<Row> rows = new ArrayList<>();

    /** Cells of one row and where it stands, without its line end. */
    private record Row(int from, int to, List<Cell> cells) {
        String key() {
            return cells.get(0).value().strip();
        }

        boolean blank() {
            return cells.stream().allMatch(cell -> cell.value().isBlank());
        }
    }

    private record Cell(int from, int to, String value) {}

    private CsvText(String file, String text) {
        this.file = file;
        this.text = text;
        scan();
    }

    /** Reads a table; a quotation mark that is never closed is refused. */
    public static CsvText parse(String file, String text) {
        return new CsvText(file, text);
    }

    private void scan() {
        var at = 0;
        while (at < text.length()) {
            var from = at;
            var cells = new ArrayList<Cell>();
            while (true) {
                var cell = cell(at);
                cells.add(cell);
                at = cell.to();
                if (at >= text.length() || text.charAt(at) != ',') {
                    break;
                }
                at++;
            }
            rows.add(new Row(from, at, cells));
            at += text.startsWith("\r\n", at) ? 2 : 1;
        }
        if (rows.isEmpty()) {
            throw Refusal.missing("header", "a first row with the names of the columns")
                    .at(file);
        }
    }

    private Cell cell(int from) {
        if (from < text.length() && text.charAt(from) == '"') {
            return quoted(from);
        }
        var to = from;
        while (to < text.length() && ",\r\n".indexOf(text.charAt(to)) < 0) {
            to++;
        }
        return new Cell(from, to, text.substring(from, to));
    }

    private Cell quoted(int from) {
        var value = new StringBuilder();
        for (int at = from + 1; at < text.length(); at++) {
            if (text.charAt(at) != '"') {
                value.append(text.charAt(at));
            } else if (text.startsWith("\"\"", at)) {
                value.append('"');
                at++;
            } else {
                return new Cell(from, at + 1, value.toString());
            }
        }
        throw Refusal.malformed("table", "a quotation mark that is never closed", "cells in closed quotation marks")
                .at(file);
    }

    @Override
    public String text() {
        return text;
    }

    /** Names of the columns. */
    public List<String> columns() {
        return rows.get(0).cells().stream().map(cell -> cell.value().strip()).toList();
    }

    /** Keys of the rows, in order. */
    public List<String> keys() {
        return rows.stream().skip(1).filter(row -> !row.blank()).map(Row::key).toList();
    }

    @Override
    public List<Leaf> leaves() {
        var leaves = new ArrayList<Leaf>();
        for (var key : keys()) {
            for (var column : columns()) {
                at(Spot.of(key, column)).ifPresent(value -> leaves.add(new Leaf(Spot.of(key, column), value, false)));
            }
        }
        return leaves;
    }

    private Optional<Row> row(String key) {
        return rows.stream()
                .skip(1)
                .filter(row -> !row.blank() && row.key().equals(key))
                .findFirst();
    }

    @Override
    public Optional<String> at(Spot spot) {
        if (spot.steps().isEmpty()) {
            return Optional.of(text);
        }
        var row = row(spot.steps().get(0));
        if (spot.steps().size() == 1) {
            return row.map(found -> text.substring(found.from(), found.to()));
        }
        var column = columns().indexOf(spot.last());
        return column < 0
                ? Optional.empty()
                : row.map(found -> column < found.cells().size()
                        ? found.cells().get(column).value()
                        : "");
    }

    @Override
    public String with(FieldEdit edit) {
        refuseUnlessStill(file, edit);
        if (edit.spot().steps().size() == 1) {
            return edit.after()
                    .map(line -> appended(edit.spot(), line))
                    .orElseGet(() -> without(row(edit.spot().last()).orElseThrow()));
        }
        var row = row(edit.spot().steps().get(0)).orElseThrow();
        var column = columns().indexOf(edit.spot().last());
        var cells = new ArrayList<>(row.cells().stream().map(this::source).toList());
        while (cells.size() <= column) {
            cells.add("");
        }
        cells.set(column, quoted(edit.after().orElse("")));
        return text.substring(0, row.from()) + String.join(",", cells) + text.substring(row.to());
    }

    private String source(Cell cell) {
        return text.substring(cell.from(), cell.to());
    }

    private String appended(Spot spot, String line) {
        var kept = text.stripTrailing();
        var grown = kept + lineEnd() + line + lineEnd();
        if (parse(file, grown).at(spot).filter(line::equals).isEmpty()) {
            throw Refusal.malformed("row", line, "one row that begins with " + spot)
                    .at(file);
        }
        return grown;
    }

    private String without(Row row) {
        var end = row.to() + (text.startsWith("\r\n", row.to()) ? 2 : 1);
        return text.substring(0, row.from()) + text.substring(Math.min(end, text.length()));
    }

    private String lineEnd() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** The source text of a row with these cells, in the order of the columns. */
    public static String line(List<String> cells) {
        return String.join(",", cells.stream().map(CsvText::quoted).toList());
    }

    private static String quoted(String value) {
        var plain = value.equals(value.strip()) && value.chars().noneMatch(letter -> ",\"\r\n".indexOf(letter) >= 0);
        return plain ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
