package fairflame.store;

import fairflame.quote.Quote;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Quotes as they were made. A stored revision never changes. */
public interface Quotes {
    /**
     * Gives the next number of the series and year, has the first revision made with it and stores that. A transaction
     * that fails gives the number back.
     */
    Quote issue(String series, int year, Function<String, Quote> make);

    /** Stores a revision. Doing so again changes nothing; other content under the same revision is refused. */
    void add(Quote quote);

    Optional<Quote> find(String number, int revision);

    /** The highest revision. */
    Optional<Quote> latest(String number);

    /** All revisions, the first one first. */
    List<Quote> revisions(String number);

    /** The stored bytes, for proof. */
    Optional<byte[]> bytes(String number, int revision);

    /** The latest revision of each quote, the last number first. */
    List<QuoteRow> rows();
}
