package fairflame.invoice;

import fairflame.catalog.TaxRule;
import fairflame.quote.Line;
import fairflame.quote.Party;
import fairflame.quote.Totals;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * An invoice or credit note made from a sealed revision. Never edited. A credit note carries negative quantities and
 * amounts, so that invoice and full credit add up to nothing.
 *
 * @param number gapless in its series and year, such as {@code I-2026-0001}
 * @param corrects number of the invoice that a credit note corrects; empty for an invoice
 * @param supplied day on which the work was done
 * @param seal chain value of the sealed revision it was made from
 * @param changeOrders numbers of the signed change orders in it, in order
 * @param taxRule the tax rule of the signed quote
 * @param complete true when the work may be called complete
 * @param payments received up to now; the deposit is one of them
 */
public record Invoice(
        String number,
        Kind kind,
        String corrects,
        LocalDate issued,
        LocalDate supplied,
        LocalDate due,
        CurrencyUnit currency,
        String quote,
        int revision,
        String seal,
        List<String> changeOrders,
        Party seller,
        String sellerLicence,
        Party customer,
        Party site,
        String title,
        List<Line> lines,
        Totals totals,
        TaxRule taxRule,
        boolean complete,
        Completion completion,
        List<String> notes,
        List<Payment> payments) {
    public Invoice {
        changeOrders = List.copyOf(changeOrders);
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

    /** The same paper with the payments that are shown on it; nothing else of an invoice ever changes. */
    public Invoice paidBy(List<Payment> received) {
        return new Invoice(
                number,
                kind,
                corrects,
                issued,
                supplied,
                due,
                currency,
                quote,
                revision,
                seal,
                changeOrders,
                seller,
                sellerLicence,
                customer,
                site,
                title,
                lines,
                totals,
                taxRule,
                complete,
                completion,
                notes,
                received);
    }

    /** Which paper it is. */
    public enum Kind {
        /** All that was agreed. */
        FULL,
        /** A part of it, after work done so far. */
        PART,
        /** Takes back an invoice or a part of one. */
        CREDIT
    }
}
