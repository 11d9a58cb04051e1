package fairflame.gas;

import fairflame.Refusal;
import fairflame.money.Amounts;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices as whole cents for the search, and back. */
final class PlanMoney {
    private PlanMoney() {}

    /** A price that must be above zero: a change that costs nothing cannot be told from none. */
    static long positive(String what, Money price, CurrencyUnit currency) {
        var cents = notNegative(what, price, currency);
        if (cents == 0) {
            throw Refusal.outOfRange(what, price, "above 0");
        }
        return cents;
    }

    static long notNegative(String what, Money price, CurrencyUnit currency) {
        Amounts.same(currency, price);
        if (price.isNegative()) {
            throw Refusal.outOfRange(what, price, "not below 0");
        }
        return price.getAmountMinorLong();
    }

    static Money of(long cents, CurrencyUnit currency) {
        return Money.ofMinor(currency, cents);
    }
}
