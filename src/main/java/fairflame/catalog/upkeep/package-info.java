/**
 * Keeping the parts list up to date from supplier price lists: column mapping, preview of what would change, superseded
 * parts, price history, undo. Pure; the rows of a sheet are handed in as text. May import catalog and below.
 */
@NullMarked
package fairflame.catalog.upkeep;

import org.jspecify.annotations.NullMarked;
