package fairflame.visit;

import java.util.Locale;

/** Where a visit stands. */
public enum State {
    STOPPED,
    DIAGNOSED,
    QUOTED,
    SIGNED,
    INVOICED,
    PAID;

    /** As stored. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
