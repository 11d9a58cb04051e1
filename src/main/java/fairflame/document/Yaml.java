package fairflame.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** One template file, read strictly: what is missing, misspelt or of the wrong shape is named. */
final class Yaml {
    private static final ObjectMapper MAPPER = YAMLMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final String file;
    private final JsonNode root;

    private Yaml(String file, JsonNode root) {
        this.file = file;
        this.root = root;
    }

    static Yaml of(Map<String, String> files, String file) {
        var text = files.get(file);
        if (text == null || text.isBlank()) {
            throw Refusal.missing("template file " + file, "a file with that name in the templates folder");
        }
        try {
            var root = MAPPER.readTree(text);
            if (!root.isObject()) {
                throw Refusal.malformed("content", "no names", "names with values")
                        .at(file);
            }
            return new Yaml(file, root);
        } catch (JsonProcessingException e) {
            var where =
                    e.getLocation() == null ? "" : ", line " + e.getLocation().getLineNr();
            throw Refusal.malformed("YAML", e.getOriginalMessage(), "well-formed YAML")
                    .at(file + where);
        }
    }

    /** Refuses every name that is not one of these. */
    Yaml only(Set<String> names) {
        root.fieldNames().forEachRemaining(name -> {
            if (!names.contains(name)) {
                throw Refusal.unknown("name", name, String.join(", ", new TreeSet<>(names)))
                        .at(file);
            }
        });
        return this;
    }

    String text(String name) {
        return text(root.path(name), name);
    }

    /** A text, or the text of a language when there is one for each. */
    String text(String name, String language) {
        var node = root.path(name);
        return node.isObject() ? text(node.path(language), name + "." + language) : text(node, name);
    }

    /** As {@link #text(String, String)}; empty where the name or the language is left out or nothing stands there. */
    String textIfTold(String name, String language) {
        var node = root.path(name).isObject() ? root.path(name).path(language) : root.path(name);
        return node.asText().isBlank() ? "" : text(node, name);
    }

    List<String> texts(String name) {
        return texts(root.path(name), name);
    }

    List<String> texts(String name, String language) {
        var node = root.path(name);
        return node.isObject() ? texts(node.path(language), name + "." + language) : texts(node, name);
    }

    String textOr(String name, String otherwise) {
        return root.has(name) ? text(name) : otherwise;
    }

    /** As {@link #named}, but the name may be left out. */
    Map<String, String> namedIfThere(String name) {
        return root.has(name) ? named(name) : Map.of();
    }

    Map<String, String> named(String name) {
        var node = root.path(name);
        if (!node.isObject()) {
            throw Refusal.missing(name, "names with texts").at(file);
        }
        var found = new LinkedHashMap<String, String>();
        node.fieldNames().forEachRemaining(each -> found.put(each, text(node.path(each), name + "." + each)));
        return found;
    }

    private String text(JsonNode node, String name) {
        if (!node.isValueNode() || node.isNull() || node.asText().isBlank()) {
            throw Refusal.missing(name, "a text").at(file);
        }
        return node.asText().strip();
    }

    private List<String> texts(JsonNode node, String name) {
        if (!node.isArray()) {
            throw Refusal.missing(name, "a list of texts").at(file);
        }
        var found = new ArrayList<String>();
        node.forEach(each -> found.add(text(each, name + "[" + found.size() + "]")));
        return List.copyOf(found);
    }

    String file() {
        return file;
    }
}
