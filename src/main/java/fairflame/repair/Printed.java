package fairflame.repair;

import fairflame.money.Amounts;
import org.joda.money.Money;

/** Figures as the sentences of this package print them. */
final class Printed {
    private Printed() {}

    /** Two decimals and the currency's code. */
    static String amount(Money money) {
        return Amounts.plain(money) + " " + money.getCurrencyUnit().getCode();
    }
}
