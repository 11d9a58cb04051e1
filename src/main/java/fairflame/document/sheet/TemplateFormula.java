package fairflame.document.sheet;

import fairflame.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;

/**
 * Reads a formula of a template. What it has to come to stands at its end as {@code +N("line.net")}: N of a text counts
 * as nothing, so every office program computes the formula as it stands, and keeps the name when the cell is moved.
 */
final class TemplateFormula {
    private static final Pattern COMES_TO =
            Pattern.compile("\\s*\\+\\s*N\\(\\s*\"\\{?([^\"{}]*)}?\"\\s*\\)\\s*$", Pattern.CASE_INSENSITIVE);
    // References to cells, sheets or names that are gone, and names: what they mean would not survive moving.
    private static final Set<String> REFUSED = Set.of(
            "NamePtg", "RefErrorPtg", "AreaErrPtg", "DeletedRef3DPtg", "DeletedArea3DPtg", "Deleted3DPxg", "ErrPtg");

    private TemplateFormula() {}

    static TemplateCell.Formula read(Cell cell, XSSFEvaluationWorkbook book, int sheet) {
        if (cell.isPartOfArrayFormulaGroup()) {
            throw Refusal.notAllowed("array formula", cell.getCellFormula(), "formulas of one cell");
        }
        var whole = cell.getCellFormula();
        var named = COMES_TO.matcher(whole);
        var comesTo = named.find() ? Optional.of(named.group(1).strip()) : Optional.<String>empty();
        var formula = comesTo.isPresent() ? whole.substring(0, named.start()) : whole;
        try {
            var tokens = FormulaParser.parse(formula, book, FormulaType.CELL, sheet, cell.getRowIndex());
            for (var token : tokens) {
                check(token, formula);
            }
            return new TemplateCell.Formula(formula, List.of(tokens), comesTo);
        } catch (FormulaParseException e) {
            throw Refusal.malformed("formula", formula, "a formula that can be read (" + e.getMessage() + ")");
        }
    }

    private static void check(Ptg token, String formula) {
        if (REFUSED.contains(token.getClass().getSimpleName())) {
            throw Refusal.notAllowed("formula", formula, "references to cells that are there, no names");
        }
        if (token instanceof Pxg far && far.getExternalWorkbookNumber() > 0) {
            throw Refusal.notAllowed("formula", formula, "references inside this file");
        }
        if (token instanceof Area3DPxg area && area.getSheetName() == null) {
            throw Refusal.notAllowed("formula", formula, "references by cell, not by table");
        }
    }
}
