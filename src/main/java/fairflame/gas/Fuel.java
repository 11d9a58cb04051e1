package fairflame.gas;

import fairflame.Refusal;
import java.util.Locale;

/** The fuel gases that the sizing tables know. */
public enum Fuel {
    NATURAL("natural"),
    PROPANE("propane");

    private final String word;

    Fuel(String word) {
        this.word = word;
    }

    /** As typed and printed. */
    public String word() {
        return word;
    }

    public static Fuel parse(String text) {
        for (var fuel : values()) {
            if (fuel.word.equals(text.strip().toLowerCase(Locale.ROOT))) {
                return fuel;
            }
        }
        throw Refusal.unknown("fuel", text, "natural, propane");
    }
}
