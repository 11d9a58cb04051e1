/**
 * Choices, lines, labour, price, tax, notes, totals and the basis of every number. May import repair and below.
 */
@NullMarked
package fairflame.quote;

import org.jspecify.annotations.NullMarked;
