package fairflame.visit;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.Locale;

/** The tables of the stock room. */
public enum Shelf {
    PARTS,
    TASKS,
    ACCESS,
    RATES,
    LADDER,
    PLACES,
    SUPPLIERS,
    PROMISES,
    TESTS,
    ACCOUNTS,
    COMPANY,
    TEXTS;

    /** Its name in words, files and histories. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it stands among the printed words and not in the catalog. */
    boolean printed() {
        return this == COMPANY || this == TEXTS;
    }

    /** The shelf of that name. */
    public static Shelf parse(String id) {
        return Arrays.stream(values())
                .filter(shelf -> shelf.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "table",
                        id,
                        String.join(", ", Arrays.stream(values()).map(Shelf::id).toList())));
    }
}
