/**
 * Work as it was done, beside the work that was signed: hours, parts, what lies outside, and what has to be signed before
 * it is billed. Pure. May import agreement and below.
 */
@NullMarked
package fairflame.invoice.actual;

import org.jspecify.annotations.NullMarked;
