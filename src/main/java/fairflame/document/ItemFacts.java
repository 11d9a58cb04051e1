package fairflame.document;

import fairflame.document.sheet.Facts;
import fairflame.document.sheet.Value;
import fairflame.money.Rounding;
import fairflame.quote.Line;
import fairflame.quote.TaxAmount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.joda.money.Money;

/** Lines, taxes and totals as a spreadsheet's placeholders name them. */
final class ItemFacts {
    private final Items items;
    private final PaperText text;
    private final Figures figures;

    ItemFacts(Items items, PaperText text) {
        this.items = items;
        this.text = text;
        this.figures = text.figures();
    }

    /** Together with further values of the sheet, further groups and further conditions. */
    Facts with(Map<String, Value> once, Map<String, List<Map<String, Value>>> each, Set<String> holds) {
        var all = new HashMap<>(once);
        all.put("sum.subtotal", money(items.totals().subtotal()));
        all.put("sum.discount", money(items.totals().discount().negated()));
        all.put("sum.tax", money(items.totals().tax()));
        all.put("sum.total", money(items.totals().total()));
        var groups = new HashMap<>(each);
        groups.put("line", items.lines().stream().map(this::line).toList());
        groups.put("tax", items.totals().taxes().stream().map(this::tax).toList());
        groups.put(
                "rounding",
                rule().stream()
                        .map(words -> Map.of("rounding.words", Value.words(words)))
                        .toList());
        var conditions = new HashSet<>(holds);
        conditions.addAll(conditions());
        return new Facts(all, groups, across(), conditions);
    }

    private Set<String> conditions() {
        var rule = items.rule();
        var holds = new HashSet<String>();
        holds.add(rule.perItem() ? "tax-by-line" : "tax-on-document");
        holds.add(rule.rounding() == Rounding.DOWN ? "rounded-down" : "rounded-nearest");
        if (items.discounted()) {
            holds.add("discounted");
        }
        if (!items.totals().taxes().isEmpty()) {
            holds.add("taxed");
        }
        return holds;
    }

    private Map<String, Value> line(Line line) {
        return Map.of(
                "line.id", Value.words(line.id()),
                "line.kind", Value.words(text.word("kinds", line.kind().word())),
                "line.item", Value.words(line.item()),
                "line.description", Value.words(line.description()),
                "line.quantity", Value.number(line.quantity(), figures.shortest(line.quantity())),
                "line.unit", Value.words(text.word("units", line.unit())),
                "line.price", money(line.unitPrice()),
                "line.net", net(line),
                "line.taxed", Value.words(text.say(line.taxable() ? Label.YES : Label.NO)),
                "line.discount", money(line.discount()));
    }

    // An amount that a basis fixes otherwise than by quantity and price stays the amount that was agreed.
    private Value net(Line line) {
        var product = Rounding.NEAREST.times(line.unitPrice(), line.quantity());
        var net = money(line.net());
        return product.equals(line.net()) ? net : net.fixed(text.say(Label.FIXED_AMOUNT));
    }

    private Map<String, Value> tax(TaxAmount tax) {
        return Map.of(
                "tax.name", Value.words(tax.name()),
                "tax.rate", Value.number(tax.rate().factor(), figures.percent(tax.rate())),
                "tax.base", money(tax.base()),
                "tax.amount", due(tax),
                "tax.of-line", Value.words(text.say(Label.TAX_OF_LINE, tax.name())));
    }

    // A part bill takes the tax to date less what earlier bills took, which may be a cent beside its own base's.
    private Value due(TaxAmount tax) {
        var rule = items.rule();
        var own = rule.perItem()
                ? items.lines().stream()
                        .map(line -> taxOf(line, tax))
                        .reduce(Money.zero(tax.amount().getCurrencyUnit()), Money::plus)
                : rule.rounding().times(tax.base(), tax.rate().factor());
        var due = money(tax.amount());
        return own.equals(tax.amount()) ? due : due.fixed(text.say(Label.FIXED_TAX));
    }

    private Map<String, Facts.Across> across() {
        if (!items.rule().perItem()) {
            return Map.of();
        }
        var table = items.lines().stream()
                .map(line -> items.totals().taxes().stream()
                        .map(tax -> money(taxOf(line, tax)))
                        .toList())
                .toList();
        return Map.of("line.tax", new Facts.Across("line", "tax", table));
    }

    private Money taxOf(Line line, TaxAmount tax) {
        return line.taxable()
                ? items.rule().rounding().times(line.afterDiscount(), tax.rate().factor())
                : Money.zero(line.net().getCurrencyUnit());
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

    Value money(Money amount) {
        return Value.number(amount.getAmount(), figures.money(amount));
    }

    /** Why each line costs what it costs: reading, rule, catalog row, standard time, with the source. */
    static List<Map<String, Value>> reasons(String choice, List<Line> lines, PaperText text) {
        return lines.stream()
                .flatMap(line -> line.basis().stream()
                        .map(basis -> Map.of(
                                "reason.choice", Value.words(choice),
                                "reason.line", Value.words(line.id()),
                                "reason.ground", Value.words(text.word("grounds", basis.what())),
                                "reason.words", Value.words(basis.words()),
                                "reason.source", Value.words(basis.source()))))
                .toList();
    }
}
