package fairflame.document.sheet;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes the cells of one sheet from its template. */
final class SheetFill {
    private final TemplateSheet template;
    private final Facts facts;
    private final FormulaMove.Grid grid;
    private final XSSFSheet sheet;
    private final Looks looks;
    private final Function<String, List<FormulaMove.Grid>> sheets;
    private final XSSFEvaluationWorkbook book;
    private final Consumer<Promise> promises;
    private final RowHeights heights;

    /**
     * A formula that was written.
     *
     * @param template where it stands in the template: sheet and cell
     * @param name of the value that it has to come to; empty when any value will do
     */
    record Promise(String template, Cell cell, String name, BigDecimal value) {}

    SheetFill(
            TemplateSheet template,
            Facts facts,
            FormulaMove.Grid grid,
            XSSFSheet sheet,
            Looks looks,
            Function<String, List<FormulaMove.Grid>> sheets,
            Consumer<Promise> promises) {
        this.template = template;
        this.facts = facts;
        this.grid = grid;
        this.sheet = sheet;
        this.looks = looks;
        this.sheets = sheets;
        this.book = XSSFEvaluationWorkbook.create(sheet.getWorkbook());
        this.promises = promises;
        this.heights = new RowHeights(sheet, template.merged());
    }

    void write() {
        for (int column = 0; column < template.columns().size(); column++) {
            for (int i = 0; i < grid.columns().count(column); i++) {
                int at = grid.columns().first(column) + i;
                sheet.setColumnWidth(at, template.widths().get(column));
                sheet.setColumnHidden(at, template.columns().get(column).hidden(facts));
            }
        }
        for (int row = 0; row < template.rows().size(); row++) {
            for (int i = 0; i < grid.rows().count(row); i++) {
                var made = sheet.createRow(grid.rows().first(row) + i);
                made.setZeroHeight(template.rows().get(row).hidden(facts));
                if (template.heights().get(row) >= 0) {
                    made.setHeightInPoints(template.heights().get(row));
                }
            }
        }
        template.cells().forEach(this::write);
    }

    private void write(TemplateCell cell) {
        for (int row = 0; row < grid.rows().count(cell.row()); row++) {
            for (int column = 0; column < grid.columns().count(cell.column()); column++) {
                var at = new HashMap<String, Integer>();
                member(template.rows().get(cell.row()), row, at);
                member(template.columns().get(cell.column()), column, at);
                try {
                    write(cell, made(cell, row, column), at);
                } catch (Refusal refusal) {
                    throw refusal.at("sheet " + template.name() + ", cell " + cell.address());
                }
            }
        }
    }

    private static void member(Rule rule, int number, Map<String, Integer> at) {
        rule.each().ifPresent(group -> at.put(group, number));
    }

    private XSSFCell made(TemplateCell cell, int row, int column) {
        var made = sheet.getRow(grid.rows().first(cell.row()) + row)
                .createCell(grid.columns().first(cell.column()) + column);
        made.setCellStyle(looks.of(cell.style()));
        cell.link().filter(link -> link.getType() != HyperlinkType.DOCUMENT).ifPresent(link -> {
            var own = sheet.getWorkbook().getCreationHelper().createHyperlink(link.getType());
            own.setAddress(link.getAddress());
            made.setHyperlink(own);
        });
        return made;
    }

    private void write(TemplateCell cell, XSSFCell made, Map<String, Integer> at) {
        if (cell.content() instanceof TemplateCell.Words words) {
            write(cell, words, made, at);
        } else if (cell.content() instanceof TemplateCell.Figure figure) {
            made.setCellValue(figure.number());
        } else if (cell.content() instanceof TemplateCell.Flag flag) {
            made.setCellValue(flag.flag());
        } else if (cell.content() instanceof TemplateCell.Formula formula) {
            write(cell, formula, made, at);
        }
    }

    private void write(TemplateCell cell, TemplateCell.Words words, XSSFCell made, Map<String, Integer> at) {
        if (words.text().plain()) {
            made.setCellValue(words.kept());
            return;
        }
        var alone = words.text().alone().map(name -> facts.value(name, at));
        if (alone.isPresent() && alone.get().number().isPresent()) {
            // A spreadsheet holds no decimal numbers; the nearest binary one shows the same cents.
            made.setCellValue(alone.get().number().get().doubleValue());
            return;
        }
        var text = words.text().filled(name -> facts.value(name, at));
        if (!text.isEmpty()) {
            made.setCellValue(text);
            if ("=+-@\t\r".indexOf(text.charAt(0)) >= 0) {
                made.setCellStyle(looks.quoted(cell.style()));
            }
            heights.fit(made, cell, text);
        }
    }

    private void write(TemplateCell cell, TemplateCell.Formula formula, XSSFCell made, Map<String, Integer> at) {
        var value = formula.comesTo().map(name -> facts.value(name, at));
        var fixed = value.filter(each -> !each.remark().isEmpty());
        if (fixed.isPresent()) {
            made.setCellValue(fixed.get().number().orElseThrow().doubleValue());
            remark(made, fixed.get().remark());
            return;
        }
        made.setCellFormula(
                new FormulaMove(book, grid, sheets, at, name -> facts.value(name, at)).moved(formula.tokens()));
        promises.accept(new Promise(
                "sheet " + template.name() + ", cell " + cell.address(),
                made,
                formula.comesTo().orElse(""),
                value.flatMap(Value::number).orElse(BigDecimal.ZERO)));
    }

    private void remark(XSSFCell cell, String words) {
        int column = cell.getColumnIndex();
        int row = cell.getRowIndex();
        var comment = sheet.createDrawingPatriarch()
                .createCellComment(new XSSFClientAnchor(0, 0, 0, 0, column + 1, row, column + 4, row + 4));
        comment.setString(words);
        comment.setAuthor("");
        comment.setAddress(row, column);
    }
}
