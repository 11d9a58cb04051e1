/**
 * Fuel gas piping: tables, equations, layout, sizing methods, pressure profile, reconciliation with what was measured,
 * least-cost plan. May import quantity and money. Sources: NFPA 54 / IFGC tables and equations, named beside each.
 */
@NullMarked
package fairflame.gas;

import org.jspecify.annotations.NullMarked;
