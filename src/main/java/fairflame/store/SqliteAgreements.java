package fairflame.store;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.quote.Quote;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

final class SqliteAgreements implements Agreements {
    private final Handle handle;
    private final Journal journal;
    private final Body<SignedRevision> body;
    private final Body<Quote> quoteBody;

    SqliteAgreements(Handle handle, Journal journal, Bodies bodies) {
        this.handle = handle;
        this.journal = journal;
        this.body = bodies.agreement();
        this.quoteBody = bodies.quote();
    }

    @Override
    public void add(SignedRevision signed) {
        store("", signed);
    }

    @Override
    public void receive(String origin, SignedRevision signed) {
        store(Origin.named(origin), signed);
    }

    private void store(String origin, SignedRevision signed) {
        journal.by();
        var quote = signed.quote();
        var subject = SqliteQuotes.subject(quote.number(), quote.revision());
        var content = new Content(body.write(signed));
        if (content.isThere(bytes(quote.number(), quote.revision()), "signed revision", subject)) {
            return;
        }
        refuseUnlessStored(quote, subject);
        insert(signed, content, origin, new SqliteChain(handle).next(signed.seal(), subject, origin));
        journal.stored("revision signed", subject, content.digest());
    }

    /** What is signed has to be what was quoted, byte for byte. */
    private void refuseUnlessStored(Quote quote, String subject) {
        var stored = new SqliteQuotes(handle, journal, quoteBody)
                .bytes(quote.number(), quote.revision())
                .orElseThrow(() -> Refusal.unknown("quote", subject, "a stored revision"));
        if (!Arrays.equals(stored, quoteBody.write(quote))) {
            throw Refusal.notAllowed("quote", subject + " with other content", "the revision as it is stored");
        }
    }

    private void insert(SignedRevision signed, Content content, String origin, long position) {
        var total = signed.taken().totals().total();
        handle.createUpdate("""
                        insert into agreement (quote, revision, choice, signed_by, signed_at, currency, total,
                            position, previous, chain, origin, body, digest)
                        values (:quote, :revision, :choice, :signedBy, :signedAt, :currency, :total,
                            :position, :previous, :chain, :origin, :body, :digest)""")
                .bind("quote", signed.quote().number())
                .bind("revision", signed.quote().revision())
                .bind("choice", signed.choice())
                .bind("signedBy", signed.signature().name())
                .bind("signedAt", signed.signature().at().toString())
                .bind("currency", total.getCurrencyUnit().getCode())
                .bind("total", total.getAmountMinorLong())
                .bind("position", position)
                .bind("previous", signed.seal().previous())
                .bind("chain", signed.seal().chain())
                .bind("origin", origin)
                .bind("body", content.bytes())
                .bind("digest", content.digest())
                .execute();
    }

    @Override
    public Optional<SignedRevision> find(String quote, int revision) {
        return bytes(quote, revision).map(body::read);
    }

    @Override
    public Optional<SignedRevision> latest(String quote) {
        return handle.createQuery("select body from agreement where quote = :quote order by revision desc limit 1")
                .bind("quote", quote)
                .mapTo(byte[].class)
                .findOne()
                .map(body::read);
    }

    @Override
    public List<SignedRevision> all() {
        return handle.createQuery("select body from agreement order by position")
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public List<SignedRevision> of(String origin) {
        return handle.createQuery("select body from agreement where origin = :origin order by position")
                .bind("origin", origin)
                .map((row, context) -> body.read(row.getBytes("body")))
                .list();
    }

    @Override
    public Optional<byte[]> bytes(String quote, int revision) {
        return handle.createQuery("select body from agreement where quote = :quote and revision = :revision")
                .bind("quote", quote)
                .bind("revision", revision)
                .mapTo(byte[].class)
                .findOne();
    }
}
