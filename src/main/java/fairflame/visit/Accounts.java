package fairflame.visit;

import fairflame.invoice.Invoice;
import fairflame.invoice.account.CustomerAccount;
import fairflame.invoice.account.Movement;
import fairflame.store.InvoiceRow;
import fairflame.store.Receipt;
import fairflame.store.Records;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.joda.money.CurrencyUnit;

/** Reads the accounts of customers from what is stored. */
final class Accounts {
    private Accounts() {}

    /** Every invoice and credit note, the first issued first. */
    static List<Invoice> papers(Records records) {
        var papers = new ArrayList<Invoice>();
        var rows = records.invoices().rows();
        for (int i = rows.size() - 1; i >= 0; i--) {
            records.invoices().find(rows.get(i).number()).ifPresent(papers::add);
        }
        return papers;
    }

    /** Payments, refunds and write-offs. */
    static List<Movement> movements(Records records) {
        var movements = new ArrayList<Movement>();
        records.payments().all().forEach(receipt -> movements.add(movement(receipt)));
        movements.addAll(records.registers().movements().all());
        return movements;
    }

    private static Movement movement(Receipt receipt) {
        var payment = receipt.payment();
        var back = payment.amount().isNegative();
        return new Movement(
                payment.id(),
                back ? Movement.Kind.REFUND : Movement.Kind.PAYMENT,
                payment.on(),
                receipt.quote(),
                receipt.invoice(),
                payment.amount().abs(),
                payment.method(),
                payment.deposit(),
                back ? "paid back" : "");
    }

    /** The account of one quote. */
    static CustomerAccount of(Records records, String quote, CurrencyUnit currency) {
        return new CustomerAccount(
                currency,
                records.invoices().ofQuote(quote),
                movements(records).stream()
                        .filter(movement -> movement.quote().equals(quote))
                        .toList());
    }

    /** The accounts of all quotes with an invoice or money received, by number of the quote. */
    static Collection<CustomerAccount> all(Records records, CurrencyUnit currency) {
        return accounts(records, currency, Optional.empty()).values();
    }

    /** The accounts of one customer's quotes. */
    static Collection<CustomerAccount> ofCustomer(Records records, CurrencyUnit currency, String customer) {
        return accounts(records, currency, Optional.of(customer)).values();
    }

    /** Numbers of the quotes with an invoice or money received, in order. */
    static SortedSet<String> quotes(Records records) {
        var quotes = new TreeSet<String>();
        records.invoices().rows().stream().map(InvoiceRow::quote).forEach(quotes::add);
        movements(records).stream().map(Movement::quote).forEach(quotes::add);
        return quotes;
    }

    private static Map<String, CustomerAccount> accounts(
            Records records, CurrencyUnit currency, Optional<String> customer) {
        var movements = movements(records);
        var accounts = new TreeMap<String, CustomerAccount>();
        for (var quote : quotes(records)) {
            var known = customer.map(name -> records.quotes()
                            .latest(quote)
                            .filter(found -> found.customer().name().equals(name))
                            .isPresent())
                    .orElse(true);
            if (known) {
                accounts.put(
                        quote,
                        new CustomerAccount(
                                currency,
                                records.invoices().ofQuote(quote),
                                movements.stream()
                                        .filter(movement -> movement.quote().equals(quote))
                                        .toList()));
            }
        }
        return accounts;
    }
}
