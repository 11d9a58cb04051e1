package fairflame.money;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reading, adding and dividing amounts of money without losing a cent. */
public final class Amounts {
    private Amounts() {}

    /** Reads plain digits with at most two decimals, such as {@code 1250.00}. */
    public static Money parse(CurrencyUnit currency, String text) {
        if (!text.strip().matches("-?\\d{1,12}(\\.\\d{1,2})?")) {
            throw Refusal.malformed("amount of money", text, "digits with at most two decimals, such as 1250.00");
        }
        return Money.of(currency, new BigDecimal(text.strip()));
    }

    /** Two decimals, no currency sign, as data files and scripts carry it. */
    public static String plain(Money amount) {
        return amount.getAmount().toPlainString();
    }

    /** The sum; zero of the currency for none. */
    public static Money sum(CurrencyUnit currency, Collection<Money> amounts) {
        return amounts.stream().reduce(Money.zero(currency), (sum, amount) -> sum.plus(same(currency, amount)));
    }

    /** The amount itself, refused when it is of another currency. */
    public static Money same(CurrencyUnit currency, Money amount) {
        if (!amount.getCurrencyUnit().equals(currency)) {
            throw Refusal.notAllowed("currency", amount.getCurrencyUnit().getCode(), currency.getCode());
        }
        return amount;
    }

    /**
     * Divides an amount in proportion to weights so that the shares add up to it exactly (largest remainder; on equal
     * remainders the earlier weight gets the cent). Each share lies within one cent of its exact value.
     *
     * @param weights none negative, at least one above zero, unless the amount is zero
     */
    public static List<Money> allocate(Money amount, List<BigDecimal> weights) {
        if (weights.stream().anyMatch(weight -> weight.signum() < 0)) {
            throw Refusal.outOfRange("weight of an allocation", weights, "zero or more");
        }
        var total = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        if (total.signum() == 0) {
            if (!amount.isZero() || weights.isEmpty()) {
                throw Refusal.notAllowed("allocation of", amount, "at least one weight above zero");
            }
            return weights.stream().map(weight -> amount).toList();
        }
        return spread(amount, weights, total);
    }

    private static List<Money> spread(Money amount, List<BigDecimal> weights, BigDecimal total) {
        var sign = amount.isNegative() ? -1 : 1;
        var cents = amount.abs().getAmountMinor();
        var shares = new ArrayList<BigDecimal>();
        var left = cents;
        for (var weight : weights) {
            var floor = cents.multiply(weight).divide(total, 0, RoundingMode.FLOOR);
            shares.add(floor);
            left = left.subtract(floor);
        }
        // Compared by cross multiplication, so that no digit of a remainder is lost.
        var byRemainder = IntStream.range(0, weights.size())
                .boxed()
                .sorted(Comparator.<Integer, BigDecimal>comparing(i -> cents.multiply(weights.get(i))
                                .subtract(shares.get(i).multiply(total)))
                        .reversed())
                .toList();
        for (int i = 0; i < left.intValueExact(); i++) {
            shares.set(byRemainder.get(i), shares.get(byRemainder.get(i)).add(BigDecimal.ONE));
        }
        var currency = amount.getCurrencyUnit();
        return shares.stream()
                .map(share -> Money.ofMinor(currency, sign * share.longValueExact()))
                .toList();
    }
}
