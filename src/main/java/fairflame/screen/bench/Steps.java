package fairflame.screen.bench;

import java.util.List;
import java.util.Set;

/** Names of the steps on the left of the bench. */
public final class Steps {
    public static final String WHO = "who";
    public static final String COMPLAINT = "complaint";
    public static final String PLATE = "plate";
    public static final String GATES = "gates";
    public static final String LEADS = "leads";
    public static final String FINDING = "finding";
    public static final String SCOPE = "scope";
    public static final String MORE = "more";
    public static final String PRICE = "price";
    public static final String PHOTOS = "photos";
    public static final String TERMS = "terms";
    public static final String DECIDE = "decide";
    private static final String CHECK = "check:";

    private Steps() {}

    public static String ofCheck(String check) {
        return CHECK + check;
    }

    /** Id of the check that a step takes; empty for other steps. */
    public static String check(String step) {
        return step.startsWith(CHECK) ? step.substring(CHECK.length()) : "";
    }

    /** Numbers of the readings that go into the visit, in order. */
    static List<Integer> placed(Draft draft, Set<String> refused) {
        return draft.numbers("reading").stream()
                .filter(number -> draft.has("reading." + number + ".value"))
                .filter(number -> !refused.contains("reading." + number + ".value"))
                .toList();
    }
}
