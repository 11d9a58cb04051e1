package fairflame.visit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.store.Packet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Two sides of a thing, field by field: JSON by the path of each value, other text as one field. */
public final class Differences {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String WHOLE = "/";
    private static final int FINGERPRINT = 12;

    private Differences() {}

    /**
     * One field.
     *
     * @param field path, such as {@code /text/customer/name}
     * @param ours absent where it is not here
     * @param theirs absent where it did not come in
     */
    public record Field(String field, Optional<String> ours, Optional<String> theirs) {
        public boolean differs() {
            return !ours.equals(theirs);
        }
    }

    /** The fields that differ, by path. */
    public static List<Field> between(String ours, String theirs) {
        return all(ours, theirs).stream().filter(Field::differs).toList();
    }

    /** Every field of both sides, by path. */
    public static List<Field> all(String ours, String theirs) {
        var here = fields(ours);
        var there = fields(theirs);
        var names = new TreeSet<>(here.keySet());
        names.addAll(there.keySet());
        var rows = new ArrayList<Field>();
        names.forEach(name ->
                rows.add(new Field(name, Optional.ofNullable(here.get(name)), Optional.ofNullable(there.get(name)))));
        return rows;
    }

    /** The beginning of the SHA-256 of a file that cannot be told field by field. */
    public static String fingerprint(byte[] file) {
        return Packet.digest(file).substring(0, FINGERPRINT);
    }

    private static Map<String, String> fields(String text) {
        var fields = new TreeMap<String, String>();
        if (!text.isEmpty()) {
            try {
                add(fields, "", JSON.readTree(text));
            } catch (JsonProcessingException notJson) {
                fields.put(WHOLE, text);
            }
        }
        return fields;
    }

    private static void add(Map<String, String> fields, String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(entry -> add(fields, path + "/" + entry.getKey(), entry.getValue()));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                add(fields, path + "/" + i, node.get(i));
            }
        } else {
            addText(fields, path.isEmpty() ? WHOLE : path, node.asText());
        }
    }

    /** A file kept inside a field, as the visit is, is told field by field too. */
    private static void addText(Map<String, String> fields, String path, String text) {
        if (text.stripLeading().startsWith("{")) {
            try {
                var inner = JSON.readTree(text);
                if (inner.isObject() && !inner.isEmpty()) {
                    add(fields, path, inner);
                    return;
                }
            } catch (JsonProcessingException notJson) {
                // It only looks like a file; it is told as it stands.
                fields.put(path, text);
                return;
            }
        }
        fields.put(path, text);
    }
}
