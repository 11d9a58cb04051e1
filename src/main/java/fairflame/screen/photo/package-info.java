/**
 * Photographs as evidence on the bench. Imports what screen may import.
 */
@NullMarked
package fairflame.screen.photo;

import org.jspecify.annotations.NullMarked;
