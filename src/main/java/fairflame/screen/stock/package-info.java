/**
 * The stock room: what the shop sells and by which rules, looked at and changed with a preview. May import
 * {@code visit}, the domain's records, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.stock;

import org.jspecify.annotations.NullMarked;
