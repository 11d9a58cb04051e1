package fairflame.store;

import fairflame.Refusal;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

final class SqliteSettings implements Settings {
    private final Handle handle;
    private final Journal journal;

    SqliteSettings(Handle handle, Journal journal) {
        this.handle = handle;
        this.journal = journal;
    }

    @Override
    public Optional<String> find(String name) {
        return handle.createQuery("select content from setting where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne();
    }

    @Override
    public void put(String name, String content) {
        journal.by();
        if (name.isBlank()) {
            throw Refusal.missing("name of a setting", "a name");
        }
        var before = find(name);
        if (before.equals(Optional.of(content))) {
            return;
        }
        handle.createUpdate("insert into setting (name, content) values (:name, :content)"
                        + " on conflict (name) do update set content = excluded.content")
                .bind("name", name)
                .bind("content", content)
                .execute();
        journal.changed("setting stored", name, before.map(Digest::of).orElse(Journal.NOTHING), Digest.of(content));
    }

    @Override
    public SortedMap<String, String> all() {
        var all = new TreeMap<String, String>();
        handle.createQuery("select name, content from setting")
                .map((row, context) -> all.put(row.getString("name"), row.getString("content")))
                .forEach(former -> {});
        return Collections.unmodifiableSortedMap(all);
    }
}
