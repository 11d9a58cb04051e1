package fairflame.catalog.upkeep;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.stream.Collectors;

/** What a column of a price list can be read as. */
public enum PriceField {
    /** The part number; has to be mapped. */
    NUMBER("number"),
    /** What the shop pays for one unit; has to be mapped. */
    COST("cost"),
    DESCRIPTION("description"),
    LIST_PRICE("list-price"),
    UNIT("unit"),
    ROLE("role"),
    SIZE("size"),
    CONSUMABLE("consumable"),
    WARRANTY_MONTHS("warranty-months"),
    /** Number of the part that takes this one's place. */
    REPLACED_BY("replaced-by");

    private final String word;

    PriceField(String word) {
        this.word = word;
    }

    /** As in mappings. */
    public String word() {
        return word;
    }

    public static PriceField parse(String text) {
        return Arrays.stream(values())
                .filter(field -> field.word.equals(text.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "field of a price list",
                        text.strip(),
                        Arrays.stream(values()).map(PriceField::word).collect(Collectors.joining(", "))));
    }
}
