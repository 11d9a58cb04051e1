package fairflame.invoice;

import fairflame.Refusal;
import fairflame.quote.Line;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** How much of each line stands on papers already issued, credits taken off. */
final class Billed {
    private final Map<String, BigDecimal> quantities = new LinkedHashMap<>();
    private final Map<String, Money> nets = new LinkedHashMap<>();
    private final Map<String, Money> discounts = new LinkedHashMap<>();

    static Billed on(List<Invoice> papers) {
        var billed = new Billed();
        papers.forEach(paper -> paper.lines().forEach(billed::add));
        return billed;
    }

    private void add(Line line) {
        quantities.merge(line.id(), line.quantity(), BigDecimal::add);
        nets.merge(line.id(), line.net(), Money::plus);
        discounts.merge(line.id(), line.discount(), Money::plus);
    }

    BigDecimal quantity(Line line) {
        return quantities.getOrDefault(line.id(), BigDecimal.ZERO);
    }

    BigDecimal left(Line line) {
        return line.quantity().subtract(quantity(line));
    }

    /** Ids that were billed and have an amount or a quantity left. */
    List<String> open() {
        return quantities.entrySet().stream()
                .filter(entry -> entry.getValue().signum() != 0)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The line as it stands once so much more of it is billed, from the start: cents that rest on the whole. */
    Line upTo(Line line, BigDecimal more) {
        var quantity = quantity(line).add(more);
        if (quantity.compareTo(line.quantity()) > 0 || quantity.signum() < 0) {
            throw Refusal.outOfRange(
                    "quantity of line " + line.id(),
                    more.toPlainString(),
                    "up to " + left(line).toPlainString() + ", what is left of "
                            + line.quantity().toPlainString());
        }
        if (quantity.compareTo(line.quantity()) == 0) {
            return line;
        }
        return with(line, quantity, share(line, line.net(), quantity), share(line, line.discount(), quantity));
    }

    /** What is new on a line that has come up to this. */
    Line now(Line upTo) {
        var zero = Money.zero(upTo.net().getCurrencyUnit());
        return with(
                upTo,
                upTo.quantity().subtract(quantity(upTo)),
                upTo.net().minus(nets.getOrDefault(upTo.id(), zero)),
                upTo.discount().minus(discounts.getOrDefault(upTo.id(), zero)));
    }

    /** One exact fraction, rounded once; the whole is reached exactly with the last quantity. */
    private static Money share(Line line, Money whole, BigDecimal quantity) {
        var currency = whole.getCurrencyUnit();
        return Money.of(
                currency,
                whole.getAmount()
                        .multiply(quantity)
                        .divide(line.quantity(), currency.getDecimalPlaces(), RoundingMode.HALF_UP));
    }

    static Line with(Line line, BigDecimal quantity, Money net, Money discount) {
        return new Line(
                line.id(),
                line.kind(),
                line.item(),
                line.description(),
                quantity,
                line.unit(),
                line.unitPrice(),
                net,
                discount,
                line.taxable(),
                line.further(),
                line.basis());
    }
}
