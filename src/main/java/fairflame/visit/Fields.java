package fairflame.visit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Strict reading of one JSON object: every field is asked for by name, and what nobody asks for is refused. */
final class Fields {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(com.fasterxml.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final JsonNode node;
    private final String place;

    private Fields(JsonNode node, String place) {
        if (!node.isObject()) {
            throw Refusal.malformed(place.isEmpty() ? "content" : place, kind(node), "a JSON object");
        }
        this.node = node;
        this.place = place;
    }

    /** The object in a whole text. */
    static Fields of(String json) {
        if (json.isBlank()) {
            throw Refusal.missing("content", "a JSON object");
        }
        try {
            return new Fields(MAPPER.readTree(json), "");
        } catch (JsonProcessingException e) {
            var at = e.getLocation();
            var where = at == null ? "" : "line " + at.getLineNr() + " column " + at.getColumnNr();
            throw Refusal.malformed("JSON " + where, e.getOriginalMessage(), "well-formed JSON");
        }
    }

    /** Where this object stands in the text. */
    String place() {
        return place;
    }

    /** The path of a field, as a message names it. */
    String path(String name) {
        return place.isEmpty() ? name : place + "." + name;
    }

    /** Refuses every field that is not one of these. */
    Fields only(String... names) {
        var allowed = new TreeSet<>(List.of(names));
        for (var field : (Iterable<String>) node::fieldNames) {
            if (!allowed.contains(field)) {
                throw Refusal.unknown("field", path(field), String.join(", ", allowed));
            }
        }
        return this;
    }

    boolean has(String name) {
        var child = node.get(name);
        return child != null && !child.isNull();
    }

    /** Text that has to be there and not blank. */
    String text(String name) {
        return optional(name).orElseThrow(() -> Refusal.missing("field " + path(name), "text"));
    }

    String textOr(String name, String otherwise) {
        return optional(name).orElse(otherwise);
    }

    /** Text, or empty when the field is absent or blank. */
    Optional<String> optional(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        var child = node.get(name);
        if (!child.isTextual()) {
            throw Refusal.malformed("field " + path(name), child, "text in quotes");
        }
        var text = child.textValue().strip();
        if (text.length() > 4000 || text.chars().anyMatch(c -> c < 32 && c != '\n' && c != '\t')) {
            throw Refusal.malformed("field " + path(name), "long or control text", "up to 4000 printable characters");
        }
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    boolean flag(String name, boolean otherwise) {
        if (!has(name)) {
            return otherwise;
        }
        if (!node.get(name).isBoolean()) {
            throw Refusal.malformed("field " + path(name), node.get(name), "true, false");
        }
        return node.get(name).booleanValue();
    }

    Optional<Integer> whole(String name, int lowest, int highest) {
        if (!has(name)) {
            return Optional.empty();
        }
        var child = node.get(name);
        if (!child.isIntegralNumber()) {
            throw Refusal.malformed("field " + path(name), child, "a whole number");
        }
        if (!child.canConvertToInt() || child.intValue() < lowest || child.intValue() > highest) {
            throw Refusal.outOfRange("field " + path(name), child, lowest + " to " + highest);
        }
        return Optional.of(child.intValue());
    }

    Fields object(String name) {
        if (!has(name)) {
            throw Refusal.missing("field " + path(name), "a JSON object");
        }
        return new Fields(node.get(name), path(name));
    }

    Optional<Fields> optionalObject(String name) {
        return has(name) ? Optional.of(object(name)) : Optional.empty();
    }

    /** The objects of an array; none when the field is absent. */
    List<Fields> objects(String name) {
        var found = new ArrayList<Fields>();
        var items = array(name);
        for (int i = 0; i < items.size(); i++) {
            found.add(new Fields(items.get(i), path(name) + "[" + i + "]"));
        }
        return found;
    }

    /** The texts of an array; none when the field is absent. */
    List<String> texts(String name) {
        var found = new ArrayList<String>();
        for (var item : array(name)) {
            if (!item.isTextual() || item.textValue().isBlank()) {
                throw Refusal.malformed("field " + path(name), item, "a list of texts in quotes");
            }
            found.add(item.textValue().strip());
        }
        return found;
    }

    /** The names of the fields, in the order of the file. */
    List<String> names() {
        var names = new ArrayList<String>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** The text values of an object by name, in the order of the file. */
    Map<String, String> named() {
        var found = new LinkedHashMap<String, String>();
        names().forEach(name -> found.put(name, text(name)));
        return found;
    }

    /** One of a few words. */
    String word(String name, Set<String> allowed) {
        var text = text(name);
        if (!allowed.contains(text)) {
            throw Refusal.unknown("field " + path(name), text, String.join(", ", new TreeSet<>(allowed)));
        }
        return text;
    }

    /** The JSON text of a field, for a reader of its own. */
    Optional<String> raw(String name) {
        return has(name) ? Optional.of(node.get(name).toString()) : Optional.empty();
    }

    private List<JsonNode> array(String name) {
        if (!has(name)) {
            return List.of();
        }
        var child = node.get(name);
        if (!child.isArray()) {
            throw Refusal.malformed("field " + path(name), kind(child), "a list");
        }
        var items = new ArrayList<JsonNode>();
        child.forEach(items::add);
        return items;
    }

    private static String kind(JsonNode node) {
        return node.getNodeType().toString().toLowerCase(java.util.Locale.ROOT);
    }
}
