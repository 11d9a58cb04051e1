/**
 * The handover: one calm page for the customer, from what was found to the signature. May import
 * {@code visit}, the domain's records, {@code screen.kit}, {@code screen.look}.
 */
@NullMarked
package fairflame.screen.handover;

import org.jspecify.annotations.NullMarked;
