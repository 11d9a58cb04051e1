package fairflame.catalog.upkeep;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A price list that was taken over.
 *
 * @param who took it over
 * @param parts how many parts it changed
 * @param undone day on which it was taken back
 */
public record TakenOver(
        int id, String supplier, String file, LocalDate day, String who, int parts, Optional<LocalDate> undone) {}
