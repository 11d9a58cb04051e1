package fairflame.catalog.upkeep;

import fairflame.catalog.Part;

/**
 * A part of the list with what upkeep knows about it.
 *
 * @param replacedBy number of the part that took its place, empty for none
 * @param vanished true when its supplier's last price list no longer had it
 */
public record Stocked(Part part, String replacedBy, boolean vanished) {
    /** A part of which nothing else is known. */
    public static Stocked of(Part part) {
        return new Stocked(part, "", false);
    }

    /** Whether new quotes may take it. */
    public boolean current() {
        return replacedBy.isEmpty();
    }
}
