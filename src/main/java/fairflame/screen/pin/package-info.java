/**
 * The digits by which a person leaves the customer's page: asked for, set, changed. Imports what screen may import.
 */
@NullMarked
package fairflame.screen.pin;

import org.jspecify.annotations.NullMarked;
