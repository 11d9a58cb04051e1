package fairflame.agreement;

/**
 * How a quote stands in the shop's records when it is to be signed.
 *
 * @param latestRevision highest revision of this quote
 * @param signed whether this revision is signed already
 * @param previous chain value of the last seal of the shop; {@link Sealing#START} for none
 */
public record Standing(int latestRevision, boolean signed, String previous) {}
