/**
 * Photographs as they are kept and printed. Imports what document may import.
 */
@NullMarked
package fairflame.document.photo;

import org.jspecify.annotations.NullMarked;
