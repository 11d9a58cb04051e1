package fairflame.invoice.books;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One account of the chart.
 *
 * @param number as the bookkeeper knows it
 */
public record Account(String number, String name, Type type) {
    /** On which side of the books it stands. */
    public enum Type {
        ASSET,
        LIABILITY,
        INCOME,
        EXPENSE;

        static Type parse(String text) {
            return Arrays.stream(values())
                    .filter(type -> type.word().equals(text.strip()))
                    .findFirst()
                    .orElseThrow(() -> Refusal.unknown(
                            "type of account",
                            text.strip(),
                            Arrays.stream(values()).map(Type::word).collect(Collectors.joining(", "))));
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
