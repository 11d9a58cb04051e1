/**
 * What each customer owes: payments, refunds and write-offs against invoices and credit notes, ageing, statement. Pure.
 * May import invoice and below.
 */
@NullMarked
package fairflame.invoice.account;

import org.jspecify.annotations.NullMarked;
