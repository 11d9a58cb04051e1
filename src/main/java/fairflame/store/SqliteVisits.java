package fairflame.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteVisits implements Visits {
    private final Handle handle;
    private final Journal journal;

    SqliteVisits(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public void save(StoredVisit visit) {
        journal.by();
        var before = find(visit.id());
        dropDraft(visit.id());
        if (before.equals(Optional.of(visit))) {
            return;
        }
        handle.createUpdate("""
                        insert into visit (id, state, customer, day, content)
                        values (:id, :state, :customer, :day, :content)
                        on conflict (id) do update set state = excluded.state, customer = excluded.customer,
                            day = excluded.day, content = excluded.content""")
                .bind("id", visit.id())
                .bind("state", visit.state())
                .bind("customer", visit.customer())
                .bind("day", visit.on().toString())
                .bind("content", visit.text())
                .execute();
        journal.changed(
                "visit stored as " + visit.state(),
                visit.id(),
                before.map(former -> Digest.of(former.text())).orElse(Journal.NOTHING),
                Digest.of(visit.text()));
    }

    @Override
    public Optional<StoredVisit> find(String id) {
        return handle.createQuery("select * from visit where id = :id")
                .bind("id", id)
                .map((row, context) -> visit(row))
                .findOne();
    }

    @Override
    public List<StoredVisit> all() {
        return handle.createQuery("select * from visit order by day desc, id")
                .map((row, context) -> visit(row))
                .list();
    }

    @Override
    public List<StoredVisit> inState(String state) {
        return handle.createQuery("select * from visit where state = :state order by day desc, id")
                .bind("state", state)
                .map((row, context) -> visit(row))
                .list();
    }

    @Override
    public void saveDraft(String visit, String text) {
        handle.createUpdate("insert into draft (visit, saved, content) values (:visit, :saved, :content)"
                        + " on conflict (visit) do update set saved = excluded.saved, content = excluded.content")
                .bind("visit", visit)
                .bind("saved", journal.by().at().toString())
                .bind("content", text)
                .execute();
    }

    @Override
    public Optional<Draft> draft(String visit) {
        return handle.createQuery("select * from draft where visit = :visit")
                .bind("visit", visit)
                .map((row, context) -> typed(row))
                .findOne();
    }

    @Override
    public List<Draft> drafts() {
        return handle.createQuery("select * from draft order by saved desc, visit")
                .map((row, context) -> typed(row))
                .list();
    }

    @Override
    public void dropDraft(String visit) {
        journal.by();
        handle.createUpdate("delete from draft where visit = :visit")
                .bind("visit", visit)
                .execute();
    }

    private static StoredVisit visit(ResultSet row) throws SQLException {
        return new StoredVisit(
                row.getString("id"),
                row.getString("state"),
                row.getString("customer"),
                LocalDate.parse(row.getString("day")),
                row.getString("content"));
    }

    private static Draft typed(ResultSet row) throws SQLException {
        return new Draft(row.getString("visit"), Instant.parse(row.getString("saved")), row.getString("content"));
    }
}
