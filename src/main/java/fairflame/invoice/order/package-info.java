/**
 * Parts to order for signed quotes and to load on the truck. Pure. May import invoice and below.
 */
@NullMarked
package fairflame.invoice.order;

import org.jspecify.annotations.NullMarked;
