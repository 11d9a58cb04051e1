package fairflame.catalog;

/**
 * Who sells parts to the shop.
 *
 * @param leadDays working days until delivery
 */
public record Supplier(String id, String name, String phone, String email, int leadDays) {}
