package fairflame.invoice.order;

import java.time.LocalDate;
import java.util.List;

/** An order sent to a supplier, and what it was for. */
public record PlacedOrder(String number, String supplier, LocalDate on, List<PartNeeded> parts) {
    public PlacedOrder {
        parts = List.copyOf(parts);
    }
}
