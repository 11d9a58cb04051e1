/**
 * Double-entry books: what invoices, credit notes and movements of money mean in a chart of accounts. Every entry
 * balances to zero. Pure; the chart is handed in as text. May import invoice and below.
 */
@NullMarked
package fairflame.invoice.books;

import org.jspecify.annotations.NullMarked;
