package fairflame.store;

import java.time.LocalDate;
import org.joda.money.Money;

/**
 * A quote in a list.
 *
 * @param revision the latest
 * @param total of the suggested choice
 * @param signed whether this revision is signed
 */
public record QuoteRow(
        String number,
        int revision,
        String visit,
        String customer,
        LocalDate made,
        LocalDate validUntil,
        Money total,
        boolean signed) {}
