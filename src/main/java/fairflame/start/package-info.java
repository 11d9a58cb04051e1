/**
 * Wires stores, documents, use cases and one face. Nobody imports it.
 */
@NullMarked
package fairflame.start;

import org.jspecify.annotations.NullMarked;
