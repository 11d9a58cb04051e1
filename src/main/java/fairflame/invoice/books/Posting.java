package fairflame.invoice.books;

import org.joda.money.Money;

/**
 * An amount on an account.
 *
 * @param amount above zero for debit, below zero for credit
 */
public record Posting(Account account, Money amount) {}
