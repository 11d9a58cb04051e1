/**
 * Decimal money: rounding rules, percentages and allocation to the cent, over {@link org.joda.money.Money}. May import
 * only the root. Rounding rules come from the tax rules named at each constant.
 */
@NullMarked
package fairflame.money;

import org.jspecify.annotations.NullMarked;
