package fairflame.store;

import fairflame.agreement.ChangeOrder;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteChangeOrders implements ChangeOrders {
    private final Handle handle;
    private final Journal journal;
    private final Body<ChangeOrder> body;

    SqliteChangeOrders(Handle handle, Journal journal, Body<ChangeOrder> body) {
        this.handle = handle;
        this.journal = journal;
        this.body = body;
    }

    @Override
    public void add(ChangeOrder order) {
        store("", order);
    }

    @Override
    public void receive(String origin, ChangeOrder order) {
        store(Origin.named(origin), order);
    }

    private void store(String origin, ChangeOrder order) {
        journal.by();
        var content = new Content(body.write(order));
        if (content.isThere(bytes(order.number()), "change order", order.number())) {
            return;
        }
        SqliteSigned.seal(handle, order.quote(), order.revision());
        insert(order, content, origin, new SqliteChain(handle).next(order.seal(), order.number(), origin));
        journal.stored("change order signed", order.number(), content.digest());
    }

    private void insert(ChangeOrder order, Content content, String origin, long position) {
        var total = order.after().total();
        handle.createUpdate("""
                        insert into change_order (number, quote, revision, signed_by, signed_at, currency, total,
                            position, previous, chain, origin, body, digest)
                        values (:number, :quote, :revision, :signedBy, :signedAt, :currency, :total,
                            :position, :previous, :chain, :origin, :body, :digest)""")
                .bind("number", order.number())
                .bind("quote", order.quote())
                .bind("revision", order.revision())
                .bind("signedBy", order.signature().name())
                .bind("signedAt", order.signature().at().toString())
                .bind("currency", total.getCurrencyUnit().getCode())
                .bind("total", total.getAmountMinorLong())
                .bind("position", position)
                .bind("previous", order.seal().previous())
                .bind("chain", order.seal().chain())
                .bind("origin", origin)
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
    }

    @Override
    public Optional<ChangeOrder> find(String number) {
        return bytes(number).map(body::read);
    }

    @Override
    public List<ChangeOrder> of(String quote, int revision) {
        return handle.createQuery(
                        "select body from change_order where quote = :quote and revision = :revision order by position")
                .bind("quote", quote)
                .bind("revision", revision)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public List<ChangeOrder> all() {
        return handle.createQuery("select body from change_order order by position")
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public List<ChangeOrder> from(String origin) {
        return handle.createQuery("select body from change_order where origin = :origin order by position")
                .bind("origin", origin)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    private Optional<byte[]> bytes(String number) {
        return handle.createQuery("select body from change_order where number = :number")
                .bind("number", number)
                .mapTo(byte[].class)
                .findOne();
    }
}
