package fairflame.invoice.order;

import java.time.LocalDate;

/**
 * Whether a part of an order has come.
 *
 * @param order number of the order
 * @param part the shop's part number
 * @param here false when it turned out not to be here after all
 * @param who looked
 */
public record Delivery(String order, String part, boolean here, LocalDate on, String who) {}
