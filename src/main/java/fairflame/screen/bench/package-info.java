/**
 * The bench: the technician's sheet for one visit. Readings, finding, paper. View models are plain and hold what was
 * typed; what it means is asked of the use cases. May import {@code visit}, the domain's records, {@code screen.kit},
 * {@code screen.look}.
 */
@NullMarked
package fairflame.screen.bench;

import org.jspecify.annotations.NullMarked;
