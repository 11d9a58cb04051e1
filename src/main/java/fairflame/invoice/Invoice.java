package fairflame.invoice;

import fairflame.quote.Line;
import fairflame.quote.Party;
import fairflame.quote.Totals;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * An invoice made from a sealed revision. Never edited.
 *
 * @param number gapless in its series and year, such as {@code I-2026-0001}
 * @param seal chain value of the sealed revision it was made from
 * @param complete true when the work may be called complete
 * @param payments received up to now; the deposit is one of them
 */
public record Invoice(
        String number,
        LocalDate issued,
        LocalDate due,
        CurrencyUnit currency,
        String quote,
        int revision,
        String seal,
        Party seller,
        String sellerLicence,
        Party customer,
        Party site,
        String title,
        List<Line> lines,
        Totals totals,
        boolean complete,
        Completion completion,
        List<String> notes,
        List<Payment> payments) {
    public Invoice {
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
        payments = List.copyOf(payments);
    }

    /** Sum of the payments. */
    public Money paid() {
        return payments.stream().map(Payment::amount).reduce(Money.zero(currency), Money::plus);
    }

    /** Total less payments. */
    public Money balance() {
        return totals.total().minus(paid());
    }
}
