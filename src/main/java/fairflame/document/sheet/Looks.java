package fairflame.document.sheet;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Styles of a template with the sign of the currency in them, and with the mark that keeps a text a text. */
final class Looks {
    /** Stands in number formats of a template for the sign of the currency. */
    private static final String CURRENCY = "\u00A4";

    private final XSSFWorkbook book;
    private final String sign;
    private final Map<String, XSSFCellStyle> made = new HashMap<>();

    /** @param sign of the currency, or its code */
    Looks(XSSFWorkbook book, String sign) {
        this.book = book;
        this.sign = sign.replace("\"", "");
    }

    CellStyle of(CellStyle style) {
        return style.getDataFormatString().contains(CURRENCY) ? made(style, false) : style;
    }

    /** An office program must not take these words for a formula when somebody edits the cell. */
    CellStyle quoted(CellStyle style) {
        return made(style, true);
    }

    private XSSFCellStyle made(CellStyle style, boolean quoted) {
        return made.computeIfAbsent(style.getIndex() + " " + quoted, key -> {
            var own = book.createCellStyle();
            own.cloneStyleFrom(style);
            own.setDataFormat(book.createDataFormat()
                    .getFormat(style.getDataFormatString().replace(CURRENCY, sign)));
            own.setQuotePrefixed(quoted);
            return own;
        });
    }
}
