package fairflame.catalog;

/**
 * A test after the repair.
 *
 * @param letter by which tasks ask for it
 * @param title what is tested, in words
 * @param pass the line that has to be met
 * @param plain the same for the customer
 */
public record AfterTest(String letter, String title, String pass, String plain, String source) {}
