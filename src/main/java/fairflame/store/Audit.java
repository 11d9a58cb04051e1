package fairflame.store;

import java.util.List;

/** The journal: every change with its author and time. It only grows. */
public interface Audit {
    /** Adds an entry of a use case's own; stored changes enter by themselves. */
    void note(String what, String subject);

    /** All entries, the first one first. */
    List<AuditEntry> all();

    /** Position of the last entry; 0 for none. Two equal answers mean that nothing was changed in between. */
    long last();

    /** The entries about one thing, the first one first. */
    List<AuditEntry> about(String subject);
}
