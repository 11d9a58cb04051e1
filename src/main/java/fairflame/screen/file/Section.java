package fairflame.screen.file;

import java.util.Locale;

/** The parts of a file. */
public enum Section {
    WORK,
    PERMIT,
    DAYS,
    CHANGE,
    BILL,
    MONEY,
    WARRANTY;

    /** As in keys of words and ids. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
