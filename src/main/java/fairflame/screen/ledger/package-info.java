/**
 * The ledger: the office's visits by what has to happen next, signed against actual, invoice, payments. May import
 * {@code visit}, the domain's records, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.ledger;

import org.jspecify.annotations.NullMarked;
