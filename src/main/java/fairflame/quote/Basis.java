package fairflame.quote;

import fairflame.wording.Spoken;

/**
 * One link of the chain that answers "why this number?".
 *
 * @param what the kind of ground: reading, rule, table, catalog row, standard time, tax rule, arithmetic
 * @param words the ground itself with its figures
 * @param source where it comes from
 */
public record Basis(String what, @Spoken String words, String source) {}
