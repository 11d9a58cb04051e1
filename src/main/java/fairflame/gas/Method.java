package fairflame.gas;

import fairflame.Refusal;
import java.util.Locale;

/** How the length that a segment is sized by is found. IFGC appendix A.3; each zone between regulators by itself. */
public enum Method {
    /** One length for all: from the supply to the most remote outlet. */
    LONGEST_LENGTH("longest length"),
    /** The longest run as before; each branch by the way to its own most remote outlet. */
    BRANCH_LENGTH("branch length"),
    /** Piping with line regulators: the elevated part to its farthest regulator, then from each regulator on. */
    HYBRID("hybrid pressure");

    private final String words;

    Method(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As typed: {@code longest-length}, {@code branch-length}, {@code hybrid}. */
    public static Method parse(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "longest-length" -> LONGEST_LENGTH;
            case "branch-length" -> BRANCH_LENGTH;
            case "hybrid" -> HYBRID;
            default -> throw Refusal.unknown("method", text, "longest-length, branch-length, hybrid");
        };
    }

    /** The method of a layout for which none was asked: hybrid where line regulators stand, else longest length. */
    public static Method usualFor(Layout layout) {
        return layout.regulators().isEmpty() ? LONGEST_LENGTH : HYBRID;
    }
}
