package fairflame.screen.bench;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Takes the text of a visit file apart into the fields of a draft, so that it can be worked on further. */
public final class DraftOfVisit {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Pattern MEASURE = Pattern.compile("([+-]?[\\d.,]+)\\s+(\\S.*)");
    private static final List<String> TOP = List.of("id", "date", "technician", "jurisdiction", "complaint");

    private final Map<String, String> fields = new LinkedHashMap<>();

    private DraftOfVisit() {}

    /** The draft of a visit file's text. */
    public static Draft read(String json) {
        try {
            var reader = new DraftOfVisit();
            reader.take(MAPPER.readTree(json));
            return new Draft(reader.fields);
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("visit", e.getOriginalMessage(), "the text of a visit file");
        }
    }

    private void take(JsonNode top) {
        TOP.forEach(name -> put(name, top.path(name)));
        party("customer", top.path("customer"));
        party("site", top.path("site"));
        top.path("heater").properties().forEach(entry -> measure("heater." + entry.getKey(), entry.getValue()));
        top.path("gates").properties().forEach(entry -> put("gate." + entry.getKey(), entry.getValue()));
        numbered("reading", top.path("readings"));
        numbered("lead", top.path("bypassLeads"));
        numbered("release", top.path("releases"));
        top.path("price").properties().forEach(entry -> plain("price." + entry.getKey(), entry.getValue()));
        // A layout is drawn, not typed field by field: its text is kept whole.
        if (top.has("layout")) {
            fields.put("layout", top.path("layout").toString());
        }
        terms("repair", top.path("repair"));
        terms("decision", top.path("decision"));
    }

    /** Terms of the repair and of the decision: inner objects become dotted fields, figures part from their units. */
    private void terms(String path, JsonNode node) {
        if (node.isObject()) {
            node.properties().forEach(entry -> terms(path + "." + entry.getKey(), entry.getValue()));
        } else if (node.isArray()) {
            fields.put(path, joined(node, ","));
        } else {
            measure(path, node);
        }
    }

    private void party(String who, JsonNode node) {
        node.properties().forEach(entry -> {
            if (entry.getValue().isArray()) {
                fields.put(who + "." + entry.getKey(), joined(entry.getValue(), "\n"));
            } else {
                put(who + "." + entry.getKey(), entry.getValue());
            }
        });
    }

    private void numbered(String name, JsonNode list) {
        var number = 1;
        for (var node : list) {
            var entry = name + "." + number++ + ".";
            node.properties().forEach(field -> {
                if (field.getKey().equals("value")) {
                    measure(entry + "value", field.getValue());
                } else if (field.getKey().equals("seen")) {
                    fields.put(entry + "told", field.getValue().asBoolean() ? "" : "yes");
                } else {
                    plain(entry + field.getKey(), field.getValue());
                }
            });
        }
        fields.values().removeIf(String::isEmpty);
    }

    private void plain(String field, JsonNode value) {
        if (value.isArray()) {
            fields.put(field, joined(value, ","));
        } else if (value.isBoolean()) {
            fields.put(field, value.asBoolean() ? "yes" : "");
        } else {
            put(field, value);
        }
    }

    /** A number and its unit go into two fields, as the bench types them. */
    private void measure(String field, JsonNode value) {
        var match = MEASURE.matcher(value.asText());
        if (match.matches()) {
            fields.put(field, match.group(1));
            fields.put(field + ".unit", match.group(2));
        } else {
            put(field, value);
        }
    }

    private void put(String field, JsonNode value) {
        if (!value.isMissingNode() && !value.isNull() && !value.asText().isEmpty()) {
            fields.put(field, value.asText());
        }
    }

    private static String joined(JsonNode list, String between) {
        var parts = new ArrayList<String>();
        list.forEach(item -> parts.add(item.asText()));
        return String.join(between, parts);
    }
}
