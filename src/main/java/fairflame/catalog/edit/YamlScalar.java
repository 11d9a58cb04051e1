package fairflame.catalog.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;

/** Ways to write a text as a YAML value, the one that looks most like the former value first. */
final class YamlScalar {
    private static final int WIDTH = 118;
    private static final int LONG = 100;
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9]\\d{0,17})(\\.\\d{1,18})?");
    private static final Pattern WORDS = Pattern.compile("[\\p{L}(][^\\n\\r\\t]*");
    /** Words that a reader of YAML takes for something else than a text. */
    private static final Set<String> LOADED =
            Set.of("null", "true", "false", "yes", "no", "on", "off", "y", "n", "nan", "inf");

    private static final Set<String> ANSWERS = Set.of("yes", "no", "true", "false");

    private YamlScalar() {}

    /**
     * Where a value stands.
     *
     * @param former style of the value before
     * @param value the value before; empty for none
     * @param flow inside brackets or braces
     * @param indent columns before the lines of a text of several lines
     * @param key columns before the value on its first line
     */
    record Place(ScalarStyle former, String value, boolean flow, int indent, int key, String lineEnd) {
        /** A place where nothing stood before. */
        static Place fresh(boolean flow, int indent, int key, String lineEnd) {
            return new Place(ScalarStyle.PLAIN, "", flow, indent, key, lineEnd);
        }
    }

    static List<String> ways(String value, Place place) {
        var ways = new ArrayList<String>();
        var block = !place.flow() && !value.isBlank() && value.equals(value.strip());
        var wasBlock = place.former() == ScalarStyle.FOLDED || place.former() == ScalarStyle.LITERAL;
        var oneLine = value.indexOf('\n') < 0;
        if (block && !oneLine) {
            ways.add(lines("|-", List.of(value.split("\n", -1)), place));
        }
        if (block && oneLine && (wasBlock || value.length() + place.key() > LONG)) {
            ways.add(lines(">-", folded(value, WIDTH - place.indent()), place));
        }
        if (oneLine && place.former() == ScalarStyle.DOUBLE_QUOTED) {
            ways.add(doubled(value));
        }
        if (oneLine && place.former() == ScalarStyle.SINGLE_QUOTED) {
            ways.add(single(value));
        }
        if (plain(value, place)) {
            ways.add(value);
        }
        if (oneLine) {
            ways.add(single(value));
        }
        ways.add(doubled(value));
        return ways;
    }

    /**
     * A number or an answer is written bare only where one stood: a reader would take 7.50 for 7.5 and yes for true
     * where a text is meant.
     */
    private static boolean plain(String value, Place place) {
        var bare = place.former() == ScalarStyle.PLAIN;
        if (NUMBER.matcher(value).matches()) {
            return bare && NUMBER.matcher(place.value()).matches();
        }
        if (loaded(value)) {
            return bare && loaded(place.value()) && ANSWERS.contains(value);
        }
        return WORDS.matcher(value).matches()
                && value.equals(value.strip())
                && !value.contains(": ")
                && !value.contains(" #")
                && !value.endsWith(":")
                && (!place.flow() || value.chars().noneMatch(letter -> ",[]{}\"':".indexOf(letter) >= 0));
    }

    private static boolean loaded(String value) {
        return LOADED.contains(value.toLowerCase(java.util.Locale.ROOT));
    }

    private static String lines(String sign, List<String> lines, Place place) {
        var text = new StringBuilder(sign);
        for (var line : lines) {
            text.append(place.lineEnd());
            if (!line.isEmpty()) {
                text.append(" ".repeat(place.indent())).append(line);
            }
        }
        return text.toString();
    }

    /** Breaks only at a single blank between two words, which a reader puts back. */
    private static List<String> folded(String value, int width) {
        var lines = new ArrayList<String>();
        var rest = value;
        while (rest.length() > width) {
            var at = lastBreak(rest, width);
            if (at < 0) {
                break;
            }
            lines.add(rest.substring(0, at));
            rest = rest.substring(at + 1);
        }
        lines.add(rest);
        return lines;
    }

    private static int lastBreak(String text, int width) {
        var before = -1;
        for (int at = 1; at < text.length() - 1; at++) {
            var single = text.charAt(at) == ' ' && text.charAt(at - 1) != ' ' && text.charAt(at + 1) != ' ';
            if (single && at > width && before >= 0) {
                return before;
            }
            if (single) {
                before = at;
            }
        }
        return before;
    }

    private static String single(String value) {
        return "'" + value.replace("'", "''") + "'";
    }

    private static String doubled(String value) {
        return '"'
                + value.replace("\\", "\\\\")
                        .replace("\"", "\\\"")
                        .replace("\n", "\\n")
                        .replace("\r", "\\r")
                        .replace("\t", "\\t")
                + '"';
    }
}
