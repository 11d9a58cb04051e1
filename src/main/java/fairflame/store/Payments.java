package fairflame.store;

import java.util.List;

/** Money received. A stored payment never changes. */
public interface Payments {
    /** Stores a payment. Doing so again changes nothing; another payment under the same id is refused. */
    void add(Receipt receipt);

    /** Those for a quote, with or without an invoice, in the order of day and id. */
    List<Receipt> ofQuote(String quote);

    /** All, in the order of day and id. */
    List<Receipt> all();

    /** Those for an invoice, in the order of day and id. */
    List<Receipt> ofInvoice(String invoice);
}
