package fairflame.gas;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** One JSON object read strictly: every field is asked for by name; what nobody asks for is refused. */
final class JsonFields {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final int LONGEST_TEXT = 400;

    private final JsonNode node;
    private final String place;

    private JsonFields(JsonNode node, String place) {
        if (!node.isObject()) {
            throw Refusal.malformed(place.isEmpty() ? "content" : place, kind(node), "a JSON object");
        }
        this.node = node;
        this.place = place;
    }

    static JsonFields of(String json) {
        try {
            return new JsonFields(MAPPER.readTree(json), "");
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            var where = at == null ? "" : " at line " + at.getLineNr() + " column " + at.getColumnNr();
            throw Refusal.malformed("JSON" + where, e.getOriginalMessage(), "well-formed JSON");
        }
    }

    JsonFields only(String... names) {
        var allowed = new TreeSet<>(List.of(names));
        for (var field : (Iterable<String>) node::fieldNames) {
            if (!allowed.contains(field)) {
                throw Refusal.unknown("field", path(field), String.join(", ", allowed));
            }
        }
        return this;
    }

    private String path(String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    private boolean has(String name) {
        return node.hasNonNull(name);
    }

    String text(String name) {
        return optional(name).orElseThrow(() -> Refusal.missing("field " + path(name), "text in quotes"));
    }

    Optional<String> optional(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        var child = node.get(name);
        if (!child.isTextual()) {
            throw Refusal.malformed(
                    "field " + path(name), child, "text in quotes, a measure with its unit such as \"60ft\"");
        }
        var text = child.textValue().strip();
        if (text.isEmpty() || text.length() > LONGEST_TEXT || text.chars().anyMatch(Character::isISOControl)) {
            throw Refusal.malformed("field " + path(name), text, "1 to " + LONGEST_TEXT + " printable characters");
        }
        return Optional.of(text);
    }

    /** Text read as something else; a refusal gets the field's name in front. */
    <T> T read(String name, Function<String, T> reading) {
        return at(name, () -> reading.apply(text(name)));
    }

    <T> Optional<T> readOptional(String name, Function<String, T> reading) {
        return optional(name).map(text -> at(name, () -> reading.apply(text)));
    }

    private <T> T at(String name, java.util.function.Supplier<T> reading) {
        try {
            return reading.get();
        } catch (Refusal refusal) {
            throw refusal.at("field " + path(name));
        }
    }

    /** A plain number, for what has no unit. */
    Optional<Double> number(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        if (!node.get(name).isNumber()) {
            throw Refusal.malformed("field " + path(name), node.get(name), "a plain number");
        }
        return Optional.of(node.get(name).doubleValue());
    }

    JsonFields object(String name) {
        if (!has(name)) {
            throw Refusal.missing("field " + path(name), "a JSON object");
        }
        return new JsonFields(node.get(name), path(name));
    }

    Optional<JsonFields> optionalObject(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /** The objects of a list; none when the field is absent. */
    List<JsonFields> objects(String name) {
        var found = new ArrayList<JsonFields>();
        if (has(name)) {
            if (!node.get(name).isArray()) {
                throw Refusal.malformed("field " + path(name), kind(node.get(name)), "a list");
            }
            for (var item : node.get(name)) {
                found.add(new JsonFields(item, path(name) + "[" + found.size() + "]"));
            }
        }
        return found;
    }

    /** Whole numbers by name, in the order of the file. */
    Map<String, Integer> counts() {
        var counts = new LinkedHashMap<String, Integer>();
        for (var field : (Iterable<String>) node::fieldNames) {
            var value = node.get(field);
            if (!value.isInt()) {
                throw Refusal.malformed("field " + path(field), value, "a whole number");
            }
            counts.put(field, value.intValue());
        }
        return counts;
    }

    /** Runs a constructor; a refusal that names no place yet gets this object's. */
    <T> T make(java.util.function.Supplier<T> making) {
        try {
            return making.get();
        } catch (Refusal refusal) {
            throw place.isEmpty()
                            || !refusal.where().isEmpty()
                            || refusal.what().startsWith("field ")
                    ? refusal
                    : refusal.at(place);
        }
    }

    private static String kind(JsonNode node) {
        return node.getNodeType().toString().toLowerCase(java.util.Locale.ROOT);
    }
}
