package fairflame.document;

import java.util.Map;

/**
 * What the paper for a customer who is away asks: the sentences to be ticked, and which quote the answer is for.
 *
 * @param identity by which the paper is found again; its text stands in a field that is not seen
 * @param orders what is ordered with a choice, by id of the choice
 * @param declines what is said of a choice that is not taken, by id of the choice
 * @param electronic consent to answer by a file
 */
public record AnswerSheet(
        PaperIdentity identity, Map<String, String> orders, Map<String, String> declines, String electronic) {
    /** Name of the group that holds the choice. */
    public static final String CHOICE = "choice";
    /** Value of that group when none of the choices is wanted. */
    public static final String NONE = "none";

    public static final String ELECTRONIC = "electronic";
    public static final String NAME = "name";
    public static final String ROLE = "role";
    public static final String DATE = "date";
    public static final String SIGNATURE = "signature";
    /** A field for a signature of the reader's own program; may stay empty. */
    public static final String DRAWN = "drawn-signature";

    public static final String IDENTITY = "identity";

    private static final String CHOICE_OF = "take-";

    public AnswerSheet {
        orders = Map.copyOf(orders);
        declines = Map.copyOf(declines);
    }

    /** Value of {@link #CHOICE} for a choice. */
    public static String value(String choice) {
        return CHOICE_OF + choice;
    }

    /** Name of the box that orders a choice. */
    public static String order(String choice) {
        return "order-" + choice;
    }

    /** Name of the box that declines a choice. */
    public static String decline(String choice) {
        return "decline-" + choice;
    }
}
