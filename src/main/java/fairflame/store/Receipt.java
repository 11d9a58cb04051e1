package fairflame.store;

import fairflame.invoice.Payment;
import java.util.Optional;

/**
 * A payment and what it was for.
 *
 * @param quote number of the quote
 * @param invoice number of the invoice; empty for a deposit taken before there is one
 */
public record Receipt(String quote, Optional<String> invoice, Payment payment) {}
