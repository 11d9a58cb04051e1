package fairflame.catalog;

import fairflame.wording.Spoken;

/**
 * What the shop promises after a repair.
 *
 * @param key by which tasks ask for it
 * @param title as printed, "limited" unless it is full
 * @param partsMonths from completion; 0 for none
 * @param labourDays from completion; 0 for none
 * @param words what is and is not covered
 */
public record Warranty(
        String key,
        @Spoken String title,
        int partsMonths,
        int labourDays,
        @Spoken String words,
        String source) {}
