/**
 * The line drawing: the gas layout by hand, sizes and pressures on it, before and after. May import
 * {@code visit}, the domain's records, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.line;

import org.jspecify.annotations.NullMarked;
