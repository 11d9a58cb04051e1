package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words, numbers and signs of one condition, read one after another. */
final class RuleTokens {
    // A minus sign stands alone between blanks, because names have hyphens.
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(-?\\d+(?:\\.\\d+)?(?=\\s|$)|[A-Za-z%][A-Za-z0-9.%/-]*(?:\\[[^\\]]*\\])?|<=|>=|<|>|\\+|-(?=\\s)|\\*)");

    private final String text;
    private final List<String> tokens = new ArrayList<>();
    private int next;

    RuleTokens(String text) {
        this.text = text;
        var matcher = TOKEN.matcher(text);
        int end = 0;
        while (end < text.length() && matcher.find(end) && matcher.start() == end) {
            tokens.add(matcher.group(1));
            end = matcher.end();
        }
        if (!text.substring(end).isBlank() || tokens.isEmpty()) {
            throw malformed();
        }
    }

    Optional<String> peek() {
        return next < tokens.size() ? Optional.of(tokens.get(next)) : Optional.empty();
    }

    String take() {
        var token = peek().orElseThrow(this::malformed);
        next++;
        return token;
    }

    /** Takes the next token if it is this one. */
    boolean took(String wanted) {
        if (peek().filter(wanted::equals).isEmpty()) {
            return false;
        }
        next++;
        return true;
    }

    boolean nextIsNumber() {
        return peek().filter(token -> token.matches("-?\\d.*")).isPresent();
    }

    int mark() {
        return next;
    }

    void backTo(int mark) {
        next = mark;
    }

    Refusal malformed() {
        return Refusal.malformed(
                "condition",
                text,
                "such as 'gas-static - gas-firing > 3.0 inwc', 'first-to-fall is volts or together', 'soot measured'");
    }
}
