package fairflame.quote;

import fairflame.wording.Spoken;

/**
 * A printed note.
 *
 * @param rule id such as {@code N-GASFIT}
 * @param text as printed
 * @param boxed true for permit and licensed work: stands in the box above the total
 * @param because which task, rule or unknown made it print
 */
public record Note(String rule, @Spoken String text, boolean boxed, String because) {}
