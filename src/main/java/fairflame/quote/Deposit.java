package fairflame.quote;

import fairflame.catalog.DepositRule;
import fairflame.money.Amounts;
import fairflame.money.Rounding;
import java.util.ArrayList;
import java.util.Comparator;
import org.joda.money.Money;

/**
 * What is asked at signing: the shop's share, never above the lesser of the caps of the place. Everything is rounded
 * down, because a cent above a cap breaks it.
 */
public final class Deposit {
    private Deposit() {}

    public static Money of(DepositRule rule, Money total) {
        var limits = new ArrayList<Money>();
        limits.add(Rounding.DOWN.times(total, rule.asked().factor()));
        rule.capPercent().ifPresent(cap -> limits.add(Rounding.DOWN.times(total, cap.factor())));
        rule.capAmount().ifPresent(cap -> limits.add(Amounts.same(total.getCurrencyUnit(), cap)));
        return limits.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    /** The rule in one sentence. */
    static String words(DepositRule rule) {
        var words = new StringBuilder("the shop asks " + rule.asked() + " of the total");
        rule.capPercent()
                .ifPresent(cap -> words.append(", the place allows at most ").append(cap));
        rule.capAmount()
                .ifPresent(cap -> words.append(", the place allows at most ").append(cap));
        return words.append("; the least counts, rounded down").toString();
    }
}
