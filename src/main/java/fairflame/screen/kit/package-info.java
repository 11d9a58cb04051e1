/**
 * Controls of our own: instrument, number pad, reasons, sheet of paper, signature pad, pipe of progress. No rule lives
 * here; a control shows what it is given. May import {@code screen.look}, the domain's records and JavaFX.
 */
@NullMarked
package fairflame.screen.kit;

import org.jspecify.annotations.NullMarked;
