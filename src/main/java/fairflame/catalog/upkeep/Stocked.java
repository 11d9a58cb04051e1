package fairflame.catalog.upkeep;

import fairflame.catalog.Part;

/**
 * A part of the list with what upkeep knows about it.
 *
 * @param replacedBy number of the part that took its place, {@link #WITHDRAWN} when none did, empty while it is sold
 * @param vanished true when its supplier's last price list no longer had it
 */
public record Stocked(Part part, String replacedBy, boolean vanished) {
    /** Stands in place of a replacement where a part went without one. */
    public static final String WITHDRAWN = "-";

    /** A part of which nothing else is known. */
    public static Stocked of(Part part) {
        return new Stocked(part, "", false);
    }

    /** Whether the shop took it out without another in its place. */
    public boolean withdrawn() {
        return replacedBy.equals(WITHDRAWN);
    }

    /** Whether new quotes may take it. */
    public boolean current() {
        return replacedBy.isEmpty();
    }
}
