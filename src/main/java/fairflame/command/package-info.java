/**
 * The command line. May import visit and the domain; never store, document or screens.
 */
@NullMarked
package fairflame.command;

import org.jspecify.annotations.NullMarked;
