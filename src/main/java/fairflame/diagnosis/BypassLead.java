package fairflame.diagnosis;

/**
 * A test lead placed across a safety switch for a moment.
 *
 * @param device id of the bridged device, such as {@code high-limit-switch}
 * @param placedBy who placed it
 * @param removed true once its removal was recorded
 */
public record BypassLead(String device, String placedBy, boolean removed) {}
