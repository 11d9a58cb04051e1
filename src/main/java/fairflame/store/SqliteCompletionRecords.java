package fairflame.store;

import fairflame.invoice.Completion;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteCompletionRecords implements CompletionRecords {
    private final Handle handle;
    private final Journal journal;
    private final Body<Completion> body;

    SqliteCompletionRecords(Handle handle, Journal journal, Body<Completion> body) {
        this.handle = handle;
        this.journal = journal;
        this.body = body;
    }

    @Override
    public void put(String quote, int revision, Completion completion) {
        journal.by();
        var content = new Content(body.write(completion));
        var before = bytes(quote, revision);
        if (before.filter(bytes -> Arrays.equals(bytes, content.bytes())).isPresent()) {
            return;
        }
        SqliteSigned.seal(handle, quote, revision);
        handle.createUpdate("insert into completion (position, quote, revision, body, digest)"
                        + " select coalesce(max(position), 0) + 1, :quote, :revision, :body, :digest from completion")
                .bind("quote", quote)
                .bind("revision", revision)
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
        journal.changed(
                "completion recorded",
                SqliteQuotes.subject(quote, revision),
                before.map(Digest::of).orElse(Journal.NOTHING),
                content.digest());
    }

    @Override
    public Optional<Completion> latest(String quote, int revision) {
        return bytes(quote, revision).map(body::read);
    }

    @Override
    public List<Completion> history(String quote, int revision) {
        return handle.createQuery(
                        "select body from completion where quote = :quote and revision = :revision order by position")
                .bind("quote", quote)
                .bind("revision", revision)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    private Optional<byte[]> bytes(String quote, int revision) {
        return handle.createQuery("select body from completion where quote = :quote and revision = :revision"
                        + " order by position desc limit 1")
                .bind("quote", quote)
                .bind("revision", revision)
                .mapTo(byte[].class)
                .findOne();
    }
}
