package fairflame.store;

import fairflame.invoice.Invoice;
import java.time.LocalDate;
import org.joda.money.Money;

/** An invoice or credit note in a list. */
public record InvoiceRow(
        String number,
        Invoice.Kind kind,
        String quote,
        int revision,
        String customer,
        LocalDate issued,
        LocalDate due,
        Money total,
        boolean complete) {}
