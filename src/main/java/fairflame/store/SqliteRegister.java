package fairflame.store;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteRegister<T extends Record> implements Register<T> {
    private final Handle handle;
    private final Journal journal;
    private final String kind;
    private final Class<T> type;

    SqliteRegister(Handle handle, Journal journal, String kind, Class<T> type) {
        this.handle = handle;
        this.journal = journal;
        this.kind = kind;
        this.type = type;
    }

    @Override
    public void put(String key, T thing) {
        journal.by();
        if (key.isBlank()) {
            throw Refusal.missing("key of " + kind, "a key");
        }
        var content = CanonicalForm.write(thing);
        var before = bytes(key);
        if (before.isPresent() && Arrays.equals(before.get(), content)) {
            return;
        }
        handle.createUpdate("""
                        insert into register_entry (position, kind, key, body, digest)
                        select coalesce(max(position), 0) + 1, :kind, :key, :body, :digest from register_entry""")
                .bind("kind", kind)
                .bind("key", key)
                .bind("body", content)
                .bind("digest", Digest.of(content))
                .execute();
        journal.changed(kind + " registered", key, before.map(Digest::of).orElse(Journal.NOTHING), Digest.of(content));
    }

    private Optional<byte[]> bytes(String key) {
        return handle.createQuery("select body from register_entry where kind = :kind and key = :key"
                        + " order by position desc limit 1")
                .bind("kind", kind)
                .bind("key", key)
                .mapTo(byte[].class)
                .findOne();
    }

    @Override
    public Optional<T> find(String key) {
        return bytes(key).map(this::read);
    }

    private T read(byte[] body) {
        return CanonicalForm.read(type, body);
    }

    @Override
    public List<T> all() {
        return handle.createQuery("""
                        select e.body from register_entry e
                        join (select key, max(position) as last, min(position) as first from register_entry
                            where kind = :kind group by key) k on k.last = e.position
                        order by k.first""")
                .bind("kind", kind)
                .map((row, context) -> read(row.getBytes("body")))
                .list();
    }

    @Override
    public List<T> history(String key) {
        return handle.createQuery("select body from register_entry where kind = :kind and key = :key order by position")
                .bind("kind", kind)
                .bind("key", key)
                .map((row, context) -> read(row.getBytes("body")))
                .list();
    }
}
