package fairflame.store;

import fairflame.Refusal;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqlitePacketLog implements PacketLog {
    private final Handle handle;
    private final Journal journal;

    SqlitePacketLog(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public Optional<Received> last(String origin, String kind, String key) {
        return handle.createQuery("select digest, made from packet_entry"
                        + " where origin = :origin and kind = :kind and key = :key")
                .bind("origin", origin)
                .bind("kind", kind)
                .bind("key", key)
                .map((row, context) -> new Received(row.getString("digest"), row.getString("made")))
                .findOne();
    }

    @Override
    public void note(String origin, String kind, String key, Received state) {
        journal.by();
        handle.createUpdate("""
                        insert into packet_entry (origin, kind, key, digest, made)
                        values (:origin, :kind, :key, :digest, :made)
                        on conflict (origin, kind, key) do update set digest = excluded.digest, made = excluded.made
                        where excluded.made > made""")
                .bind("origin", origin)
                .bind("kind", kind)
                .bind("key", key)
                .bind("digest", state.digest())
                .bind("made", state.made())
                .execute();
    }

    @Override
    public void conflict(Conflict conflict) {
        journal.by();
        var digest = Digest.of(conflict.theirs());
        var added = handle.createUpdate("""
                        insert into packet_conflict (position, origin, kind, key, ours, theirs, reason, body)
                        select coalesce(max(position), 0) + 1, :origin, :kind, :key, :ours, :theirs, :reason, :body
                        from packet_conflict where true
                        on conflict (origin, kind, key, theirs) do nothing""")
                .bind("origin", conflict.origin())
                .bind("kind", conflict.kind())
                .bind("key", conflict.key())
                .bind("ours", conflict.ours())
                .bind("theirs", digest)
                .bind("reason", conflict.reason())
                .bind("body", conflict.theirs().getBytes(StandardCharsets.UTF_8))
                .execute();
        if (added > 0) {
            journal.stored("conflict kept", conflict.kind() + " " + conflict.key(), digest);
        }
    }

    @Override
    public List<Conflict> conflicts() {
        return handle.createQuery("select * from packet_conflict order by position")
                .map((row, context) -> read(row))
                .list();
    }

    private static Conflict read(ResultSet row) throws SQLException {
        return new Conflict(
                row.getInt("position"),
                row.getString("origin"),
                row.getString("kind"),
                row.getString("key"),
                row.getString("ours"),
                new String(row.getBytes("body"), StandardCharsets.UTF_8),
                row.getString("reason"),
                Optional.ofNullable(row.getString("settled")));
    }

    @Override
    public void settle(int position, String words) {
        journal.by();
        if (words.isBlank()) {
            throw Refusal.missing("what was done about conflict " + position, "a few words");
        }
        var changed = handle.createUpdate(
                        "update packet_conflict set settled = :words where position = :position and settled is null")
                .bind("words", words)
                .bind("position", position)
                .execute();
        if (changed == 0) {
            throw Refusal.unknown("open conflict", position, "the number of a conflict that is open");
        }
        journal.changed("conflict settled", "conflict " + position, Journal.NOTHING, Digest.of(words));
    }
}
