package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * One sheet of a template as it was read: cells, sizes, and the rules of its rows and columns.
 *
 * @param heights in points, by row; negative where the row has no height of its own
 * @param widths in 1/256 of a character, by column
 */
record TemplateSheet(
        String name,
        List<TemplateCell> cells,
        List<Rule> rows,
        List<Rule> columns,
        List<Float> heights,
        List<Integer> widths,
        List<CellRangeAddress> merged,
        Optional<CellRangeAddress> printed,
        Optional<CellRangeAddress> repeated) {
    static final int MOST_ROWS = 1000;
    static final int MOST_COLUMNS = 100;

    /** Reads a sheet and refuses what cannot be filled, naming sheet and cell. */
    static TemplateSheet read(XSSFSheet sheet, Vocabulary names) {
        try {
            return reading(sheet, names);
        } catch (Refusal refusal) {
            throw refusal.at("sheet " + sheet.getSheetName());
        }
    }

    private static TemplateSheet reading(XSSFSheet sheet, Vocabulary names) {
        if (sheet.getLastRowNum() >= MOST_ROWS) {
            throw Refusal.outOfRange("rows", sheet.getLastRowNum() + 1, "at most " + MOST_ROWS);
        }
        if (!sheet.getTables().isEmpty()) {
            throw Refusal.notAllowed("table", sheet.getTables().get(0).getName(), "plain ranges of cells");
        }
        var cells = cells(sheet);
        int across = 1 + cells.stream().mapToInt(TemplateCell::column).max().orElse(0);
        var rows = new ArrayList<Rule>();
        var heights = new ArrayList<Float>();
        for (int i = 0; i <= sheet.getLastRowNum(); i++) {
            rows.add(Rule.ONCE);
            var row = sheet.getRow(i);
            heights.add(row != null && row.getCTRow().getCustomHeight() ? row.getHeightInPoints() : -1f);
        }
        var columns = new ArrayList<Rule>();
        var widths = new ArrayList<Integer>();
        for (int i = 0; i < across; i++) {
            columns.add(Rule.ONCE);
            widths.add(sheet.getColumnWidth(i));
        }
        for (var cell : cells) {
            try {
                obey(cell, rows, columns, names);
            } catch (Refusal refusal) {
                throw refusal.at("cell " + cell.address());
            }
        }
        var read = new TemplateSheet(
                sheet.getSheetName(),
                cells,
                List.copyOf(rows),
                List.copyOf(columns),
                List.copyOf(heights),
                List.copyOf(widths),
                List.copyOf(sheet.getMergedRegions()),
                printArea(sheet),
                Optional.ofNullable(sheet.getRepeatingRows()));
        read.check(names);
        return read;
    }

    private static List<TemplateCell> cells(XSSFSheet sheet) {
        var book = XSSFEvaluationWorkbook.create(sheet.getWorkbook());
        var index = sheet.getWorkbook().getSheetIndex(sheet);
        var cells = new ArrayList<TemplateCell>();
        for (var row : sheet) {
            for (var cell : row) {
                try {
                    if (cell.getColumnIndex() >= MOST_COLUMNS) {
                        throw Refusal.outOfRange("columns", cell.getColumnIndex() + 1, "at most " + MOST_COLUMNS);
                    }
                    cells.add(TemplateCell.of(cell, content(cell, book, index)));
                } catch (Refusal refusal) {
                    throw refusal.at("cell " + cell.getAddress());
                }
            }
        }
        return List.copyOf(cells);
    }

    private static TemplateCell.Content content(Cell cell, XSSFEvaluationWorkbook book, int sheet) {
        return switch (cell.getCellType()) {
            case FORMULA -> TemplateFormula.read(cell, book, sheet);
            case STRING ->
                new TemplateCell.Words(CellText.parse(cell.getStringCellValue()), cell.getRichStringCellValue());
            case NUMERIC -> new TemplateCell.Figure(cell.getNumericCellValue());
            case BOOLEAN -> new TemplateCell.Flag(cell.getBooleanCellValue());
            case ERROR -> throw Refusal.malformed("value", "an error", "words, numbers and formulas");
            default -> new TemplateCell.Nothing();
        };
    }

    private static void obey(TemplateCell cell, List<Rule> rows, List<Rule> columns, Vocabulary names) {
        if (cell.content() instanceof TemplateCell.Words words) {
            for (var instruction : words.text().instructions()) {
                if (instruction.row()) {
                    rows.set(cell.row(), rows.get(cell.row()).with(instruction, names));
                } else {
                    columns.set(cell.column(), columns.get(cell.column()).with(instruction, names));
                }
            }
        }
    }

    private static Optional<CellRangeAddress> printArea(XSSFSheet sheet) {
        var area = sheet.getWorkbook().getPrintArea(sheet.getWorkbook().getSheetIndex(sheet));
        // Several areas or whole columns are printed as the program itself would.
        return area == null || !area.matches(".*\\$[A-Z]+\\$\\d+:\\$[A-Z]+\\$\\d+") || area.contains(",")
                ? Optional.empty()
                : Optional.of(CellRangeAddress.valueOf(
                        area.substring(area.lastIndexOf('!') + 1).replace("$", "")));
    }

    private void check(Vocabulary names) {
        var used = new HashSet<String>();
        for (var cell : cells) {
            try {
                used.addAll(checked(cell, names));
            } catch (Refusal refusal) {
                throw refusal.at("cell " + cell.address());
            }
        }
        names.required().stream()
                .filter(name -> !used.contains(name))
                .sorted()
                .findFirst()
                .ifPresent(name -> {
                    var groups = names.groups(name);
                    var where = groups.isEmpty()
                            ? "a cell"
                            : "a cell in a row or column with {row for each "
                                    + String.join(
                                            "} and {column for each ",
                                            groups.stream().sorted().toList()) + "}";
                    throw Refusal.missing(
                            "placeholder {" + name + "}",
                            where + " that shows it, or a formula that ends in +N(\"" + name + "\")");
                });
    }

    private Set<String> checked(TemplateCell cell, Vocabulary names) {
        var used = new HashSet<String>();
        if (cell.content() instanceof TemplateCell.Words words) {
            used.addAll(words.text().names());
        }
        if (cell.content() instanceof TemplateCell.Formula formula) {
            formula.comesTo().ifPresent(used::add);
            formula.inTexts().forEach(names::groups);
        }
        var groups = groups(cell);
        for (var name : used) {
            var needed = names.groups(name);
            if (!groups.containsAll(needed)) {
                throw Refusal.notAllowed(
                        "placeholder {" + name + "} outside of its repetition",
                        cell.address(),
                        "a row or column with {row for each ...} or {column for each ...} of "
                                + String.join(" and ", needed.stream().sorted().toList()));
            }
        }
        return used;
    }

    private Set<String> groups(TemplateCell cell) {
        var groups = new HashSet<String>();
        rows.get(cell.row()).each().ifPresent(groups::add);
        columns.get(cell.column()).each().ifPresent(groups::add);
        return groups;
    }
}
