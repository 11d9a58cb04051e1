package fairflame.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

final class SqliteAudit implements Audit {
    private final Handle handle;
    private final Journal journal;

    SqliteAudit(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public void note(String what, String subject) {
        journal.changed(what, subject, Journal.NOTHING, Journal.NOTHING);
    }

    @Override
    public List<AuditEntry> all() {
        return handle.createQuery("select * from audit order by position")
                .map((row, context) -> entry(row))
                .list();
    }

    @Override
    public long last() {
        return handle.createQuery("select coalesce(max(position), 0) from audit")
                .mapTo(Long.class)
                .one();
    }

    @Override
    public List<AuditEntry> about(String subject) {
        return handle.createQuery("select * from audit where subject = :subject order by position")
                .bind("subject", subject)
                .map((row, context) -> entry(row))
                .list();
    }

    private static AuditEntry entry(ResultSet row) throws SQLException {
        return new AuditEntry(
                row.getLong("position"),
                Instant.parse(row.getString("at")),
                row.getString("who"),
                row.getString("what"),
                row.getString("subject"),
                row.getString("before"),
                row.getString("after"));
    }
}
