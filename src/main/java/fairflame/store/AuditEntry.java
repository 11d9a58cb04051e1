package fairflame.store;

import java.time.Instant;

/**
 * One line of the journal.
 *
 * @param position from 1, without gap
 * @param what such as {@code quote stored}
 * @param subject number or id of what was changed
 * @param before SHA-256 of the content before, empty for none
 * @param after SHA-256 of the content after, empty for none
 */
public record AuditEntry(
        long position, Instant at, String who, String what, String subject, String before, String after) {}
