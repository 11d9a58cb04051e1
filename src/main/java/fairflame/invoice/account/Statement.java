package fairflame.invoice.account;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.quote.Party;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What happened on a customer's account between two days, both included.
 *
 * @param opening balance before the first day
 * @param rows with the balance after each in {@code balances}
 * @param closing balance after the last day
 */
public record Statement(
        Party customer,
        LocalDate from,
        LocalDate to,
        Money opening,
        List<StatementRow> rows,
        List<Money> balances,
        Money closing) {
    public Statement {
        rows = List.copyOf(rows);
        balances = List.copyOf(balances);
    }

    /** The statement over all quotes of a customer. */
    public static Statement of(Party customer, CurrencyUnit currency, Collection<CustomerAccount> accounts, Span span) {
        var all = accounts.stream()
                .flatMap(account -> account.rows().stream())
                .sorted(java.util.Comparator.comparing(StatementRow::on))
                .toList();
        var before = all.stream().filter(row -> row.on().isBefore(span.from())).toList();
        var within = all.stream().filter(row -> span.holds(row.on())).toList();
        var opening =
                Amounts.sum(currency, before.stream().map(StatementRow::charge).toList());
        var balances = new ArrayList<Money>();
        var balance = opening;
        for (var row : within) {
            balance = balance.plus(row.charge());
            balances.add(balance);
        }
        return new Statement(customer, span.from(), span.to(), opening, within, balances, balance);
    }

    /** Two days, both included. */
    public record Span(LocalDate from, LocalDate to) {
        public Span {
            if (to.isBefore(from)) {
                throw Refusal.outOfRange("last day", to, "not before the first day, " + from);
            }
        }

        public boolean holds(LocalDate day) {
            return !day.isBefore(from) && !day.isAfter(to);
        }
    }
}
