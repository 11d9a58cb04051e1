/**
 * Sealed revision, signature, choice taken, choices declined, change orders. May import quote.
 */
@NullMarked
package fairflame.agreement;

import org.jspecify.annotations.NullMarked;
