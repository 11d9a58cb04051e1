package fairflame.screen.kit;

import fairflame.quote.Gauge;
import java.util.Locale;

/** How something stands: told by a word and a shape, the colour only repeats them. */
public enum Tone {
    GOOD,
    EDGE,
    OUTSIDE,
    OPEN;

    public static Tone of(Gauge.Verdict verdict) {
        return switch (verdict) {
            case GOOD -> GOOD;
            case EDGE -> EDGE;
            case OUTSIDE -> OUTSIDE;
        };
    }

    /** As style classes and words are keyed by it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
