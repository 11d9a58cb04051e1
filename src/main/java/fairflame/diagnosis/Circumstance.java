package fairflame.diagnosis;

/**
 * A word that says when or how a reading was taken.
 *
 * @param id such as {@code warm}, {@code furnace-on}
 * @param words as printed
 * @param group circumstances of one group exclude each other within a comparison, such as {@code load}; empty for none
 * @param source key of the source
 */
public record Circumstance(String id, String words, String group, String source) {}
