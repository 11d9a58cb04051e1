package fairflame.document;

import fairflame.document.page.Ink;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks of a spreadsheet's cells. */
final class SheetStyles {
    /** What a cell shows. */
    enum Look {
        TITLE,
        SECTION,
        LABEL,
        HEADER,
        HEADER_RIGHT,
        TEXT,
        /** Text behind a number, set off from it. */
        AFTER,
        STRONG,
        NOTICE,
        QUANTITY,
        MONEY,
        RATE,
        SUM_LABEL,
        SUM_MONEY,
        TOTAL_LABEL,
        TOTAL_MONEY
    }

    private static final String FONT = "Arial";

    private final XSSFWorkbook book;
    private final String money;
    private final Map<Look, XSSFCellStyle> styles = new EnumMap<>(Look.class);

    /** @param sign of the currency, or its code */
    SheetStyles(XSSFWorkbook book, String sign) {
        this.book = book;
        var quoted = '"' + sign.replace("\"", "") + '"';
        this.money = quoted + "#,##0.00;-" + quoted + "#,##0.00";
        for (var look : Look.values()) {
            styles.put(look, style(look));
        }
    }

    XSSFCellStyle of(Look look) {
        var style = styles.get(look);
        if (style == null) {
            throw new IllegalStateException("no style for " + look);
        }
        return style;
    }

    private XSSFCellStyle style(Look look) {
        var style = book.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setFont(font(look));
        switch (look) {
            case HEADER -> header(style, HorizontalAlignment.LEFT);
            case HEADER_RIGHT -> header(style, HorizontalAlignment.RIGHT);
            case TEXT, AFTER, STRONG -> text(style, look);
            case NOTICE -> notice(style);
            case QUANTITY -> number(style, "General", true);
            case MONEY -> number(style, money, true);
            case RATE -> number(style, "0.00####%", false);
            case SUM_LABEL, TOTAL_LABEL -> style.setAlignment(HorizontalAlignment.RIGHT);
            case SUM_MONEY -> number(style, money, false);
            case TOTAL_MONEY -> {
                number(style, money, false);
                style.setBorderTop(BorderStyle.MEDIUM);
            }
            default -> style.setWrapText(false);
        }
        return style;
    }

    private XSSFFont font(Look look) {
        var font = book.createFont();
        font.setFontName(FONT);
        font.setColor(color(look == Look.LABEL ? Ink.SLATE : Ink.INK));
        font.setBold(
                switch (look) {
                    case TITLE, SECTION, LABEL, HEADER, HEADER_RIGHT, STRONG, NOTICE, TOTAL_LABEL, TOTAL_MONEY -> true;
                    default -> false;
                });
        font.setFontHeightInPoints((short)
                switch (look) {
                    case TITLE -> 18;
                    case SECTION, TOTAL_LABEL, TOTAL_MONEY -> 12;
                    default -> 10;
                });
        return font;
    }

    private void header(XSSFCellStyle style, HorizontalAlignment align) {
        style.setAlignment(align);
        fill(style, Ink.PAPER);
        style.setBorderBottom(BorderStyle.MEDIUM);
    }

    private void notice(XSSFCellStyle style) {
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
        fill(style, Ink.PAPER);
        style.setBorderLeft(BorderStyle.THICK);
        style.setLeftBorderColor(color(Ink.AMBER));
    }

    private void fill(XSSFCellStyle style, Ink ink) {
        style.setFillForegroundColor(color(ink));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private void text(XSSFCellStyle style, Look look) {
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) (look == Look.AFTER ? 1 : 0));
        quietRule(style);
    }

    private void number(XSSFCellStyle style, String format, boolean ruled) {
        style.setAlignment(HorizontalAlignment.RIGHT);
        style.setDataFormat(book.createDataFormat().getFormat(format));
        if (ruled) {
            quietRule(style);
        }
    }

    private static void quietRule(XSSFCellStyle style) {
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(color(Ink.RULE));
    }

    private static XSSFColor color(Ink ink) {
        var rgb = ink.rgb();
        return new XSSFColor(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb}, null);
    }
}
