package fairflame.store;

import fairflame.Refusal;
import org.jdbi.v3.core.Handle;

/** Asks for the signed revision that change orders, completion and invoices stand on. */
final class SqliteSigned {
    private SqliteSigned() {}

    /** Chain value of the seal of a signed revision; refuses an unsigned one. */
    static String seal(Handle handle, String quote, int revision) {
        return handle.createQuery("select chain from agreement where quote = :quote and revision = :revision")
                .bind("quote", quote)
                .bind("revision", revision)
                .mapTo(String.class)
                .findOne()
                .orElseThrow(() -> Refusal.notAllowed(
                        "quote", SqliteQuotes.subject(quote, revision), "a revision that is signed and stored"));
    }
}
