package fairflame.quote;

import java.time.LocalDate;
import org.joda.money.Money;

/**
 * A diagnostic fee that was paid earlier and is credited against the repair.
 *
 * @param amount as paid, before tax
 * @param sameTrip true when the trip of that visit was paid with it and the repair needs no other trip
 */
public record PaidDiagnosis(Money amount, LocalDate on, boolean sameTrip) {}
