/**
 * The pages of the whole office beside the list of visits: what is due, parts to order, money, packets, figures, books.
 * May import {@code visit}, the domain's records, {@code screen.ledger}, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.office;

import org.jspecify.annotations.NullMarked;
