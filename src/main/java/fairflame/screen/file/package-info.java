/**
 * One visit's file in the ledger: work as it was done, permit, days, bills, changes, money, warranty. May import
 * {@code visit}, the domain's records, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.file;

import org.jspecify.annotations.NullMarked;
