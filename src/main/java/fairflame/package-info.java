/**
 * The root: only {@link fairflame.Refusal}, the family of errors that a user can mend. May import nothing of the
 * project.
 */
@NullMarked
package fairflame;

import org.jspecify.annotations.NullMarked;
