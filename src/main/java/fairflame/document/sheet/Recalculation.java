package fairflame.document.sheet;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.formula.eval.NotImplementedException;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Works out every formula that was written and holds it against the value that is stored. */
final class Recalculation {
    // Binary fractions beside the cents that no office program shows; a tenth of a cent is far above.
    private static final int PLACES = 7;

    private Recalculation() {}

    /** Leaves its value in every formula cell; refuses the first that cannot be worked out or comes out otherwise. */
    static void check(XSSFWorkbook book, List<SheetFill.Promise> promises) {
        var engine = book.getCreationHelper().createFormulaEvaluator();
        // A sheet that is asked from another one comes first: the cell at fault is named, not the one that shows it.
        var ordered = promises.stream()
                .sorted(Comparator.comparing(
                        promise -> promise.cell().getCellFormula().contains("!")))
                .toList();
        for (var promise : ordered) {
            try {
                worked(engine, promise);
            } catch (Refusal refusal) {
                throw refusal.at(promise.template());
            }
        }
    }

    private static void worked(FormulaEvaluator engine, SheetFill.Promise promise) {
        var formula = promise.cell().getCellFormula();
        try {
            var type = engine.evaluateFormulaCell(promise.cell());
            if (type == CellType.ERROR) {
                var error = FormulaError.forInt(promise.cell().getErrorCellValue());
                throw Refusal.notAllowed("formula", "=" + formula, "one that gives a value, not " + error.getString());
            }
            if (!promise.name().isEmpty()) {
                compare(promise, type, formula);
            }
        } catch (NotImplementedException | FormulaParseException | IllegalStateException e) {
            throw Refusal.notAllowed("formula", "=" + formula, "functions that the program can work out itself");
        }
    }

    private static void compare(SheetFill.Promise promise, CellType type, String formula) {
        var stored = promise.value().toPlainString();
        if (type != CellType.NUMERIC) {
            throw Refusal.notAllowed("result of =" + formula, type, stored + ", the stored " + promise.name());
        }
        var result = BigDecimal.valueOf(promise.cell().getNumericCellValue());
        if (result.setScale(PLACES, RoundingMode.HALF_EVEN).compareTo(promise.value()) != 0) {
            throw Refusal.notAllowed(
                    "result of =" + formula, result.toPlainString(), stored + ", the stored " + promise.name());
        }
    }
}
