package fairflame.invoice.account;

import fairflame.money.Amounts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Open invoices by how long they are overdue on a day.
 *
 * @param rows the longest overdue first
 * @param spare money of customers that no invoice has used
 */
public record Ageing(LocalDate day, CurrencyUnit currency, List<Row> rows, Money spare) {
    public Ageing {
        rows = List.copyOf(rows);
    }

    /** How late; the usual steps of the trade's books (common practice, no source). */
    public enum Step {
        NOT_DUE("not due", 0),
        TO_30("1 to 30 days", 30),
        TO_60("31 to 60 days", 60),
        TO_90("61 to 90 days", 90),
        OVER_90("over 90 days", Long.MAX_VALUE);

        private final String words;
        private final long last;

        Step(String words, long last) {
            this.words = words;
            this.last = last;
        }

        public String words() {
            return words;
        }

        static Step of(long daysLate) {
            for (var step : values()) {
                if (daysLate <= step.last) {
                    return step;
                }
            }
            return OVER_90;
        }
    }

    /** One open invoice; on its due day it is not late yet. */
    public record Row(OpenItem item, long daysLate, Step step) {}

    public static Ageing of(LocalDate day, CurrencyUnit currency, Collection<CustomerAccount> accounts) {
        var rows = new ArrayList<Row>();
        for (var account : accounts) {
            account.items().stream()
                    .filter(item -> item.open().isPositive())
                    .map(item -> row(item, day))
                    .forEach(rows::add);
        }
        rows.sort(Comparator.comparing(Row::daysLate)
                .reversed()
                .thenComparing(row -> row.item().invoice().number()));
        var spare = Amounts.sum(
                currency, accounts.stream().map(CustomerAccount::spare).toList());
        return new Ageing(day, currency, rows, spare);
    }

    private static Row row(OpenItem item, LocalDate day) {
        var late = Math.max(0, ChronoUnit.DAYS.between(item.invoice().due(), day));
        return new Row(item, late, Step.of(late));
    }

    /** What is open in one step. */
    public Money sum(Step step) {
        return Amounts.sum(
                currency,
                rows.stream()
                        .filter(row -> row.step() == step)
                        .map(row -> row.item().open())
                        .toList());
    }

    /** All that is open. */
    public Money total() {
        return Amounts.sum(currency, rows.stream().map(row -> row.item().open()).toList());
    }
}
