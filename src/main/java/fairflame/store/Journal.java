package fairflame.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Writes the journal of one transaction. Every change goes through it, so that none happens unseen. */
final class Journal {
    static final String NOTHING = "";
    private final Handle handle;
    private final Optional<By> by;
    private boolean over;

    /** Without an author the transaction only reads. */
    Journal(Handle handle, Optional<By> by) {
        this.handle = handle;
        this.by = by;
    }

    /** Who changes; asked before each change, so that a reading transaction stays one. */
    By by() {
        refuseWhenOver();
        return by.orElseThrow(() -> new IllegalStateException("a reading transaction cannot change anything"));
    }

    /** Called when the transaction has ended: what it handed out is of no more use. */
    void end() {
        over = true;
    }

    void refuseWhenOver() {
        if (over) {
            throw new IllegalStateException("this transaction is over");
        }
    }

    /** A new thing. */
    void stored(String what, String subject, String digest) {
        changed(what, subject, NOTHING, digest);
    }

    void changed(String what, String subject, String before, String after) {
        handle.createUpdate("""
                        insert into audit (position, at, who, what, subject, before, after)
                        select coalesce(max(position), 0) + 1, :at, :who, :what, :subject, :before, :after from audit""")
                .bind("at", by().at().toString())
                .bind("who", by().who())
                .bind("what", what)
                .bind("subject", subject)
                .bind("before", before)
                .bind("after", after)
                .execute();
    }
}
