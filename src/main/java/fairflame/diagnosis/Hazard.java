package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.Locale;

/** How dangerous a check is for the person who does it. Common practice, no source. */
public enum Hazard {
    H0("look only", 1.0),
    H1("dead and isolated", 1.25),
    H2("live low volts or hot", 1.5),
    H3("gas opened or line volts", 2.0),
    H4("do not proceed", 100);

    private final String words;
    private final double minutes;

    Hazard(String words, double minutes) {
        this.words = words;
        this.minutes = minutes;
    }

    public String words() {
        return words;
    }

    /** What a minute under this hazard counts as, in minutes of looking; invented for the demo. */
    double weight() {
        return minutes;
    }

    static Hazard parse(String text) {
        for (var hazard : values()) {
            if (hazard.name().equals(text.strip().toUpperCase(Locale.ROOT))) {
                return hazard;
            }
        }
        throw Refusal.unknown("hazard", text, "H0, H1, H2, H3, H4");
    }
}
