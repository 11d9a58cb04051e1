package fairflame.invoice.account;

import fairflame.invoice.Invoice;
import org.joda.money.Money;

/**
 * An invoice with what is left of it.
 *
 * @param credited sum of the credit notes that name it, zero or more
 * @param settled paid and written off, refunds taken out
 * @param open still to be paid, never below zero
 */
public record OpenItem(Invoice invoice, Money credited, Money settled, Money open) {}
