package fairflame.store;

import fairflame.Refusal;
import fairflame.agreement.Seal;
import fairflame.agreement.Sealing;
import java.util.List;
import org.jdbi.v3.core.Handle;

final class SqliteChain implements Chain {
    private final Handle handle;

    SqliteChain(Handle handle) {
        this.handle = handle;
    }

    @Override
    public String last() {
        return last("");
    }

    /** Chain value of the last seal of an origin. */
    String last(String origin) {
        return handle.createQuery("select chain from chain_link where origin = :origin order by position desc limit 1")
                .bind("origin", origin)
                .mapTo(String.class)
                .findOne()
                .orElse(Sealing.START);
    }

    @Override
    public List<Link> links() {
        return handle.createQuery("select position, subject, previous, chain, origin from chain_link order by position")
                .map((row, context) -> new Link(
                        row.getLong("position"),
                        row.getString("subject"),
                        row.getString("previous"),
                        row.getString("chain"),
                        row.getString("origin")))
                .list();
    }

    /** The position for a new seal; refuses one that was made upon another than the last. */
    long next(Seal seal, String subject, String origin) {
        if (!seal.previous().equals(last(origin))) {
            throw Refusal.notAllowed(
                    "seal of " + subject, seal.previous(), "a seal that follows the last one, " + last(origin));
        }
        return handle.createQuery("select coalesce(max(position), 0) + 1 from chain_link")
                .mapTo(Long.class)
                .one();
    }
}
