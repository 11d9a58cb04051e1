/**
 * A shop's own data: parts, suppliers, tasks with standard times, access steps, rates, price ladder, jurisdictions. May
 * import quantity and money. Sources stand in the rows of the shop's files.
 */
@NullMarked
package fairflame.catalog;

import org.jspecify.annotations.NullMarked;
