package fairflame.document;

import fairflame.document.SheetStyles.Look;
import fairflame.money.Rounding;
import fairflame.quote.Line;
import fairflame.quote.TaxAmount;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines and totals as formulas: net is quantity times unit price, rounded; tax follows the rule that the quote was made
 * under, on the document or on each line, to the nearest cent or down. Total formulas are written after the lines, so
 * that their ranges hold all of them.
 */
final class ItemTab {
    private static final int ID = 0;
    private static final int KIND = 1;
    private static final int WORDS = 2;
    private static final int QUANTITY = 3;
    private static final int UNIT = 4;
    private static final int PRICE = 5;
    private static final int NET = 6;
    private static final int TAXED = 7;
    private static final int DISCOUNT = 8;

    private final Tab tab;
    private final Items items;
    private final PaperText text;
    private final int firstTax;
    private int firstLine;
    private int lastLine;

    ItemTab(Tab tab, Items items, PaperText text) {
        this.tab = tab;
        this.items = items;
        this.text = text;
        this.firstTax = items.discounted() ? DISCOUNT + 1 : DISCOUNT;
    }

    static int[] widths() {
        return new int[] {6, 13, 50, 14, 10, 14, 14, 9, 14, 16, 16, 16, 16};
    }

    int lastColumn() {
        return items.rule().perItem() ? firstTax - 1 + items.totals().taxes().size() : firstTax - 1;
    }

    /** Writes header, lines and totals; gives the address of the total. */
    String write() {
        header();
        firstLine = tab.number() + 1;
        items.lines().forEach(this::line);
        lastLine = tab.number();
        tab.next();
        return totals();
    }

    private void header() {
        tab.next(Tab.TALL)
                .text(ID, text.say(Label.LINE), Look.HEADER)
                .text(KIND, "", Look.HEADER)
                .text(WORDS, text.say(Label.DESCRIPTION), Look.HEADER)
                .text(QUANTITY, text.say(Label.QUANTITY), Look.HEADER_RIGHT)
                .text(UNIT, text.say(Label.UNIT), Look.HEADER)
                .text(PRICE, text.say(Label.UNIT_PRICE), Look.HEADER_RIGHT)
                .text(NET, text.say(Label.AMOUNT), Look.HEADER_RIGHT)
                .text(TAXED, text.say(Label.TAXED), Look.HEADER);
        if (items.discounted()) {
            tab.text(DISCOUNT, text.say(Label.DISCOUNT_SHARE), Look.HEADER_RIGHT);
        }
        if (items.rule().perItem()) {
            int column = firstTax;
            for (var tax : items.totals().taxes()) {
                tab.text(column++, text.say(Label.TAX_OF_LINE, tax.name()), Look.HEADER_RIGHT);
            }
        }
        tab.freeze(tab.number() - 1);
    }

    private void line(Line line) {
        tab.next()
                .text(ID, line.id(), Look.TEXT)
                .text(KIND, text.word("kinds", line.kind().word()), Look.TEXT)
                .wrapped(WORDS, line.description(), Look.TEXT)
                .number(QUANTITY, line.quantity(), Look.QUANTITY)
                .text(UNIT, text.word("units", line.unit()), Look.AFTER)
                .number(PRICE, line.unitPrice().getAmount(), Look.MONEY)
                .text(TAXED, text.say(line.taxable() ? Label.YES : Label.NO), Look.AFTER);
        net(line);
        if (items.discounted()) {
            tab.number(DISCOUNT, line.discount().getAmount(), Look.MONEY);
        }
        if (items.rule().perItem()) {
            int column = firstTax;
            for (var tax : items.totals().taxes()) {
                lineTax(line, tax, column++);
            }
        }
    }

    // An amount that a basis fixes otherwise than by quantity and price stays the amount that was agreed.
    private void net(Line line) {
        var product = Rounding.NEAREST.times(line.unitPrice(), line.quantity());
        if (product.equals(line.net())) {
            tab.formula(NET, "ROUND(" + tab.at(QUANTITY) + "*" + tab.at(PRICE) + ",2)", Look.MONEY);
        } else {
            tab.number(NET, line.net().getAmount(), Look.MONEY).note(NET, text.say(Label.FIXED_AMOUNT));
        }
    }

    private void lineTax(Line line, TaxAmount tax, int column) {
        var base = items.discounted() ? "(" + tab.at(NET) + "-" + tab.at(DISCOUNT) + ")" : tab.at(NET);
        var rate = tax.rate().factor().toPlainString();
        var due = line.taxable() ? rounded(base + "*" + rate) : "0";
        tab.formula(column, due, Look.MONEY);
    }

    private String rounded(String exact) {
        // The inner rounding takes away what binary numbers add; ten places hold the exact product.
        return items.rule().rounding() == Rounding.DOWN
                ? "ROUNDDOWN(ROUND(" + exact + ",10),2)"
                : "ROUND(" + exact + ",2)";
    }

    private String totals() {
        var parts = new ArrayList<String>();
        parts.add(amount(text.say(Label.SUBTOTAL), "ROUND(SUM(" + range(NET) + "),2)"));
        if (items.discounted()) {
            parts.add(amount(text.say(Label.DISCOUNT), "-ROUND(SUM(" + range(DISCOUNT) + "),2)"));
        }
        if (!items.totals().taxes().isEmpty()) {
            tab.next()
                    .text(QUANTITY, text.say(Label.TAX_BASE), Look.SUM_LABEL)
                    .text(UNIT, text.say(Label.TAX_RATE), Look.SUM_LABEL);
        }
        int column = firstTax;
        for (var tax : items.totals().taxes()) {
            parts.add(tax(tax, column++));
        }
        tab.next(Tab.TALL).text(PRICE, text.say(Label.TOTAL), Look.TOTAL_LABEL);
        var total = tab.formula(NET, "ROUND(" + String.join("+", parts) + ",2)", Look.TOTAL_MONEY);
        tab.next();
        rule().forEach(words -> tab.next().wide(ID, NET, words, Look.LABEL));
        return total;
    }

    private String amount(String label, String formula) {
        tab.next().text(PRICE, label, Look.SUM_LABEL);
        return tab.formula(NET, formula, Look.SUM_MONEY);
    }

    private String tax(TaxAmount tax, int column) {
        tab.next().text(WORDS, tax.name(), Look.SUM_LABEL);
        var taxed = "\"" + text.say(Label.YES).replace("\"", "\"\"") + "\"";
        var base = "SUMIF(" + range(TAXED) + "," + taxed + "," + range(NET) + ")";
        if (items.discounted()) {
            base += "-SUMIF(" + range(TAXED) + "," + taxed + "," + range(DISCOUNT) + ")";
        }
        var baseCell = tab.formula(QUANTITY, base, Look.SUM_MONEY);
        tab.number(UNIT, tax.rate().factor(), Look.RATE);
        tab.text(PRICE, text.say(Label.NO_TAX), Look.SUM_LABEL);
        var due =
                items.rule().perItem() ? "ROUND(SUM(" + range(column) + "),2)" : rounded(baseCell + "*" + tab.at(UNIT));
        return tab.formula(NET, due, Look.SUM_MONEY);
    }

    private List<String> rule() {
        var rule = items.rule();
        var words = new ArrayList<String>();
        if (rule.layers().size() > 1) {
            words.add(text.say(rule.combined() ? Label.ROUNDING_COMBINED : Label.ROUNDING_LAYERS));
        }
        words.add(text.say(rule.perItem() ? Label.ROUNDING_ITEM : Label.ROUNDING_DOCUMENT));
        words.add(text.say(rule.rounding() == Rounding.DOWN ? Label.ROUNDING_DOWN : Label.ROUNDING_NEAREST));
        return words;
    }

    private String range(int column) {
        var letter = org.apache.poi.ss.util.CellReference.convertNumToColString(column);
        return letter + firstLine + ":" + letter + lastLine;
    }
}
