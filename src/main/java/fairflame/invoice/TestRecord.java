package fairflame.invoice;

/**
 * One test after the repair.
 *
 * @param passed whether the heater met the pass line
 * @param result what was read, in words, such as "no bubbles, no detector rise"
 */
public record TestRecord(boolean passed, String result) {}
