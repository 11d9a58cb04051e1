package fairflame.invoice.permit;

import java.time.LocalDate;

/**
 * Something that has to happen by a day, or on it.
 *
 * @param key unique and the same whenever the list is made, such as {@code inspection-Q-2026-0001}
 * @param title one short line
 * @param details more words, empty for none
 */
public record Due(String key, Kind kind, LocalDate day, String title, String details) {
    /** What it is about. */
    public enum Kind {
        APPLY,
        INSPECTION,
        PERMIT_ENDS,
        LICENCE_ENDS,
        QUOTE_ENDS,
        CANCEL_ENDS,
        INVOICE_DUE
    }
}
