package fairflame.gas;

import fairflame.Refusal;
import java.util.Locale;

/** Where pipe lies. Rules on materials and on pressure indoors hang on it. */
public enum Place {
    INDOORS,
    OUTDOORS,
    BURIED;

    /** As typed and printed. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Place parse(String text) {
        for (var place : values()) {
            if (place.word().equals(text.strip().toLowerCase(Locale.ROOT))) {
                return place;
            }
        }
        throw Refusal.unknown("place", text, "indoors, outdoors, buried");
    }
}
