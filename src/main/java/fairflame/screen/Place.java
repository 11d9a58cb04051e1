package fairflame.screen;

import java.util.Locale;

/** The places of the program. */
public enum Place {
    LEDGER,
    BENCH,
    LINE,
    STOCK;

    /** As words, pictures and ids are keyed by it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
