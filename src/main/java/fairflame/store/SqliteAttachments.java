package fairflame.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteAttachments implements Attachments {
    private final Handle handle;
    private final Journal journal;

    SqliteAttachments(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public void add(Attachment attachment) {
        journal.by();
        var content = new Content(attachment.bytes());
        var stored = find(attachment.visit(), attachment.name()).map(Attachment::bytes);
        if (content.isThere(stored, "file", attachment.subject())) {
            return;
        }
        handle.createUpdate("insert into attachment (visit, name, body, digest) values (:visit, :name, :body, :digest)")
                .bind("visit", attachment.visit())
                .bind("name", attachment.name())
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
        journal.stored("file stored", attachment.subject(), content.digest());
    }

    @Override
    public void remove(String visit, String name) {
        journal.by();
        var former = find(visit, name);
        if (former.isPresent()) {
            handle.createUpdate("delete from attachment where visit = :visit and name = :name")
                    .bind("visit", visit)
                    .bind("name", name)
                    .execute();
            journal.changed(
                    "file taken out",
                    former.get().subject(),
                    Digest.of(former.get().bytes()),
                    Journal.NOTHING);
        }
    }

    @Override
    public Optional<Attachment> find(String visit, String name) {
        return handle.createQuery("select * from attachment where visit = :visit and name = :name")
                .bind("visit", visit)
                .bind("name", name)
                .map((row, context) -> read(row))
                .findOne();
    }

    @Override
    public List<Attachment> of(String visit) {
        return handle.createQuery("select * from attachment where visit = :visit order by name")
                .bind("visit", visit)
                .map((row, context) -> read(row))
                .list();
    }

    @Override
    public List<Attachment> all() {
        return handle.createQuery("select * from attachment order by visit, name")
                .map((row, context) -> read(row))
                .list();
    }

    private static Attachment read(ResultSet row) throws SQLException {
        return new Attachment(row.getString("visit"), row.getString("name"), row.getBytes("body"));
    }
}
