/**
 * Conversion of a sealed revision, numbering, payments, balance, and the gate of permits and tests. May import agreement
 * and below.
 */
@NullMarked
package fairflame.invoice;

import org.jspecify.annotations.NullMarked;
