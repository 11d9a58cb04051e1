/**
 * The JavaFX face: window, places and the way between them. No rule lives here or below. May import {@code visit} and
 * the domain's records, never {@code store}, {@code document} or {@code command}.
 */
@NullMarked
package fairflame.screen;

import org.jspecify.annotations.NullMarked;
