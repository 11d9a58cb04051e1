package fairflame.screen.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairflame.Refusal;
import fairflame.quantity.Unit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/**
 * All that was typed and chosen for one visit, keystroke for keystroke, whether or not it makes sense yet. A flat list of
 * fields such as {@code heater.input} or {@code reading.3.value}, so that it can be saved, undone and compared simply.
 */
public record Draft(Map<String, String> fields) {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int MOST_DIGITS = 6;

    public Draft {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    public static Draft empty() {
        return new Draft(Map.of());
    }

    /** What was typed in a field; empty when nothing was. */
    public String get(String field) {
        return fields.getOrDefault(field, "");
    }

    public boolean has(String field) {
        return !get(field).isBlank();
    }

    /** A copy with one field changed; an empty value takes the field away. */
    public Draft with(String field, String value) {
        var copy = new LinkedHashMap<>(fields);
        if (value.isEmpty()) {
            copy.remove(field);
        } else {
            copy.put(field, value);
        }
        return new Draft(copy);
    }

    /** A copy whose fields know the unit that they are typed in. */
    Draft withUnits(Map<String, Unit> units) {
        var copy = new LinkedHashMap<>(fields);
        units.forEach((field, unit) -> copy.put(field + ".unit", unit.spelling()));
        return new Draft(copy);
    }

    /** A copy without a numbered entry, such as {@code reading.3}. */
    public Draft without(String entry) {
        var copy = new LinkedHashMap<>(fields);
        copy.keySet().removeIf(key -> key.startsWith(entry + "."));
        return new Draft(copy);
    }

    /** The numbers in use below a name, rising: {@code reading} gives 1, 2, 5. */
    public List<Integer> numbers(String name) {
        var found = new TreeSet<Integer>();
        var start = name + ".";
        for (var key : fields.keySet()) {
            if (key.startsWith(start)) {
                number(key, start.length()).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    /** The one to six digits that stand here up to a full stop; every view asks at every keystroke, so by hand. */
    private static OptionalInt number(String key, int from) {
        int number = 0;
        int end = from;
        while (end < key.length() && key.charAt(end) != '.') {
            var digit = key.charAt(end++) - '0';
            if (digit < 0 || digit > 9 || end - from > MOST_DIGITS) {
                return OptionalInt.empty();
            }
            number = number * 10 + digit;
        }
        return end == from ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** The next free number below a name. */
    public int nextNumber(String name) {
        return numbers(name).stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
    }

    /** The latest entry below a name whose field has a value: the last reading of a check. */
    public Optional<Integer> last(String name, String field, String value) {
        return numbers(name).stream()
                .filter(number -> get(name + "." + number + "." + field).equals(value))
                .reduce((first, second) -> second);
    }

    /** As kept on disk. */
    public String text() {
        try {
            return MAPPER.writeValueAsString(fields);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Reads what {@link #text} wrote. */
    public static Draft parse(String text) {
        try {
            return new Draft(MAPPER.readValue(text, new TypeReference<LinkedHashMap<String, String>>() {}));
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("kept draft", e.getOriginalMessage(), "what the bench wrote");
        }
    }
}
