package fairflame.document.sheet;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.StringPtg;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.RichTextString;

/** One cell of a template, with what it looks like and what is to be written. */
record TemplateCell(int row, int column, CellStyle style, Optional<Hyperlink> link, Content content) {
    /** What a cell holds. */
    sealed interface Content {}

    record Nothing() implements Content {}

    /** @param kept the text with its fonts, for a cell without placeholders */
    record Words(CellText text, RichTextString kept) implements Content {}

    record Figure(double number) implements Content {}

    record Flag(boolean flag) implements Content {}

    /**
     * @param written as it stands in the template, without the name it carries
     * @param comesTo name of the value that the formula has to come to
     */
    record Formula(String written, List<Ptg> tokens, Optional<String> comesTo) implements Content {
        Formula {
            tokens = List.copyOf(tokens);
        }

        /** Names of the placeholders in the texts of the formula. */
        List<String> inTexts() {
            return tokens.stream()
                    .filter(StringPtg.class::isInstance)
                    .flatMap(token -> CellText.parse(((StringPtg) token).getValue()).names().stream())
                    .toList();
        }
    }

    /** Address in the template. */
    String address() {
        return new org.apache.poi.ss.util.CellAddress(row, column).formatAsString();
    }

    static TemplateCell of(Cell cell, Content content) {
        return new TemplateCell(
                cell.getRowIndex(),
                cell.getColumnIndex(),
                cell.getCellStyle(),
                Optional.ofNullable(cell.getHyperlink()),
                content);
    }
}
