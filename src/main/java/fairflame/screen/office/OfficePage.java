package fairflame.screen.office;

import java.util.Locale;

/** The pages of the ledger, in the order of the office's day. */
public enum OfficePage {
    VISITS,
    DUE,
    ORDERS,
    MONEY,
    PACKETS,
    FIGURES,
    BOOKS;

    /** As words and ids are keyed by it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
