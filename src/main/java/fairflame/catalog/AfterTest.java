package fairflame.catalog;

import fairflame.wording.Spoken;

/**
 * A test after the repair.
 *
 * @param letter by which tasks ask for it
 * @param title what is tested, in words
 * @param pass the line that has to be met
 * @param plain the same for the customer
 */
public record AfterTest(
        String letter,
        @Spoken String title,
        @Spoken String pass,
        @Spoken String plain,
        String source) {}
