/**
 * Reads a paper that came back filled in, and tells whether anything but its fields was changed. Imports what document
 * may import.
 */
@NullMarked
package fairflame.document.returned;

import org.jspecify.annotations.NullMarked;
