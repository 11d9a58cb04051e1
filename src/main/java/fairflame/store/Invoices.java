package fairflame.store;

import fairflame.invoice.Invoice;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Invoices and credit notes as they were issued. None changes, none is deleted, and no number is left out. */
public interface Invoices {
    /**
     * Gives the next number of the series and year, has the invoice made with it and stores that, all in the running
     * transaction: when it fails the number was never given.
     */
    Invoice issue(String series, int year, Function<String, Invoice> make);

    /**
     * Stores an invoice that has its number. Doing so again changes nothing. Refused: other content under the same
     * number, a number that is not the next one, an agreement that is not stored or has another seal.
     */
    void add(Invoice invoice);

    Optional<Invoice> find(String number);

    /** Those of a quote, in the order they were stored. */
    List<Invoice> ofQuote(String quote);

    /** All, the last stored first. */
    List<InvoiceRow> rows();

    /** The stored bytes, for proof. */
    Optional<byte[]> bytes(String number);
}
