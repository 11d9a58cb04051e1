package fairflame.quote;

/**
 * A discount on one kind of line, taken before the document discount.
 *
 * @param item part number, task id, or word of the line kind, such as {@code labour}
 */
public record LineDiscount(String item, Discount discount) {}
