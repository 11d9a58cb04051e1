package fairflame.catalog;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One entry of a YAML file together with its place, so that every refusal can name it.
 *
 * @param where file, entry and field, such as {@code tasks.yaml R03, hours}
 */
record YamlEntry(String where, JsonNode node) {
    private static final ObjectReader TREE = YAMLMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build()
            .readerFor(JsonNode.class);

    static YamlEntry parse(FileText file) {
        try {
            JsonNode root = TREE.readValue(file.text());
            return new YamlEntry(file.name(), root).map();
        } catch (JsonProcessingException e) {
            var line = e.getLocation() == null ? "" : " line " + e.getLocation().getLineNr();
            throw Refusal.malformed("YAML", e.getOriginalMessage(), "well-formed YAML, each key once")
                    .at(file.name() + line);
        }
    }

    /** This entry itself, refused unless it has named fields. */
    YamlEntry map() {
        if (!node.isObject()) {
            throw Refusal.malformed("entry", shown(), "fields with a name each").at(where);
        }
        return this;
    }

    /** Refuses fields beyond these: they are most likely misspelt. */
    YamlEntry only(String... allowed) {
        map().node.fieldNames().forEachRemaining(name -> {
            if (!List.of(allowed).contains(name)) {
                throw Refusal.unknown("field", name, String.join(", ", allowed)).at(where);
            }
        });
        return this;
    }

    /** The field; refused when it is absent or empty. */
    YamlEntry field(String name) {
        return find(name)
                .orElseThrow(() -> Refusal.missing("field " + name, "a value").at(where));
    }

    Optional<YamlEntry> find(String name) {
        var child = node.isObject() ? node.path(name) : MissingNode.getInstance();
        return child.isMissingNode() || child.isNull()
                ? Optional.empty()
                : Optional.of(new YamlEntry(where + ", " + name, child));
    }

    /** The named fields of this entry, in the order of the file. */
    Map<String, YamlEntry> fields() {
        var fields = new LinkedHashMap<String, YamlEntry>();
        map().node
                .properties()
                .forEach(field ->
                        fields.put(field.getKey(), new YamlEntry(where + ", " + field.getKey(), field.getValue())));
        return fields;
    }

    /** The items of a list field; none when the field is absent. An item with an id is placed by it. */
    List<YamlEntry> items(String name) {
        var items = new ArrayList<YamlEntry>();
        find(name).ifPresent(list -> {
            if (!list.node.isArray()) {
                throw Refusal.malformed("list", list.shown(), "a list").at(list.where);
            }
            for (int i = 0; i < list.node.size(); i++) {
                var item = list.node.get(i);
                var id = item.path("id").isValueNode() ? item.path("id").asText() : String.valueOf(i + 1);
                items.add(new YamlEntry(where + ", " + name + " " + id, item));
            }
        });
        return items;
    }

    /** The texts of a list field; none when it is absent. */
    List<String> texts(String name) {
        return items(name).stream().map(item -> item.as(text -> text)).toList();
    }

    /** Reads this entry as one value; a refusal names the place. */
    <T> T as(Function<String, T> reader) {
        if (!node.isValueNode() || node.isNull()) {
            throw Refusal.malformed("value", shown(), "a single value").at(where);
        }
        try {
            return reader.apply(Fields.filled(node.asText()));
        } catch (Refusal refusal) {
            throw refusal.at(where);
        }
    }

    <T> T read(String name, Function<String, T> reader) {
        return field(name).as(reader);
    }

    String text(String name) {
        return read(name, text -> text);
    }

    String textOr(String name, String otherwise) {
        return find(name).map(field -> field.as(text -> text)).orElse(otherwise);
    }

    private String shown() {
        var text = node.toString();
        return text.length() > 60 ? text.substring(0, 60) : text;
    }
}
