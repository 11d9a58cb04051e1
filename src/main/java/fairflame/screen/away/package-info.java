/**
 * The sheet for a customer who is away: the paper goes out, and what comes back is read. Imports what screen may
 * import.
 */
@NullMarked
package fairflame.screen.away;

import org.jspecify.annotations.NullMarked;
