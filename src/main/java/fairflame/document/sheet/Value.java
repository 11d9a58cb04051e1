package fairflame.document.sheet;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What fills a placeholder.
 *
 * @param shown as text, where it stands among other words
 * @param number as a number, where it stands alone in its cell or as what a formula has to come to; empty for words
 * @param remark why a formula of the template would not come to the number; empty when it does. The number then stands
 *     in its place with the remark on the cell
 */
public record Value(String shown, Optional<BigDecimal> number, String remark) {
    public static Value words(String shown) {
        return new Value(shown, Optional.empty(), "");
    }

    public static Value number(BigDecimal number, String shown) {
        return new Value(shown, Optional.of(number), "");
    }

    /** The same, agreed otherwise than a formula could tell. */
    public Value fixed(String why) {
        return new Value(shown, number, why);
    }
}
