package fairflame.invoice;

import java.time.LocalDate;
import org.joda.money.Money;

/**
 * Money received.
 *
 * @param method cash, card, cheque, transfer
 * @param reference receipt or cheque number; empty for none
 * @param deposit true when taken at signing
 */
public record Payment(String id, LocalDate on, Money amount, String method, String reference, boolean deposit) {}
