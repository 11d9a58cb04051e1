package fairflame.visit;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where a shop's files are. What is not given is taken from the samples inside the program.
 *
 * @param catalog folder of parts, tasks, rates and places
 * @param knowledge folder of checks, causes and rules
 * @param templates folder of printed words
 */
public record Sources(Optional<Path> catalog, Optional<Path> knowledge, Optional<Path> templates) {
    /** The samples inside the program. */
    public static Sources samples() {
        return new Sources(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
