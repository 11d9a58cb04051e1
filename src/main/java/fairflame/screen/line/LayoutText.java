package fairflame.screen.line;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.StreamSupport;

/** The text of a gas layout with the changes a person can make to it by hand. What is not touched stays as it was. */
public final class LayoutText {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String SEGMENTS = "segments";
    private static final String APPLIANCES = "appliances";
    private static final String COUNT = "\\d{1,6}";
    /** Only the specific gravity of the gas is a number with decimals and without a unit. */
    private static final String FACTOR = "\\d?\\.\\d{1,4}";

    private final ObjectNode top;

    private LayoutText(ObjectNode top) {
        this.top = top;
    }

    /** Reads a layout that may still be incomplete. */
    public static LayoutText of(String json) {
        try {
            if (MAPPER.readTree(json) instanceof ObjectNode object) {
                return new LayoutText(object);
            }
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("gas layout", e.getOriginalMessage(), "the text of a layout");
        }
        throw Refusal.malformed("gas layout", json, "the text of a layout");
    }

    /** A meter, one run and the heater: the least that can be drawn. */
    public static LayoutText fresh(String fuel, String input, String minimum, String maximum) {
        var top = MAPPER.createObjectNode();
        top.put("site", "gas line");
        top.putObject("gas").put("fuel", fuel);
        var source = top.putObject("source");
        source.put("kind", "meter").put("node", "meter").put("pressure", "7 inwc");
        var text = new LayoutText(top);
        text.list(SEGMENTS);
        text.list(APPLIANCES);
        text.run("meter", "heater");
        text.appliance("heater", "heater", input, minimum, maximum);
        return text;
    }

    private com.fasterxml.jackson.databind.node.ArrayNode list(String name) {
        return top.withArray(name);
    }

    private List<ObjectNode> entries(String list) {
        return StreamSupport.stream(top.path(list).spliterator(), false)
                .filter(ObjectNode.class::isInstance)
                .map(ObjectNode.class::cast)
                .toList();
    }

    public List<String> segments() {
        return ids(SEGMENTS);
    }

    public List<String> appliances() {
        return ids(APPLIANCES);
    }

    private List<String> ids(String list) {
        return entries(list).stream().map(entry -> entry.path("id").asText()).toList();
    }

    /** A field of a run or an appliance; empty when it has none. */
    public String get(String id, String field) {
        return entry(id).map(entry -> text(entry, field)).orElse("");
    }

    /** A field of the source, or of the whole line, which is edited beside it. */
    public String source(String field) {
        return text(field.contains(".") ? top : top.path("source"), field);
    }

    private static String text(JsonNode entry, String field) {
        JsonNode found = entry;
        for (var part : field.split("\\.", -1)) {
            found = found.path(part);
        }
        return found.asText("");
    }

    private java.util.Optional<ObjectNode> entry(String id) {
        var all = new ArrayList<ObjectNode>(entries(SEGMENTS));
        all.addAll(entries(APPLIANCES));
        return all.stream()
                .filter(entry -> entry.path("id").asText().equals(id))
                .findFirst();
    }

    /** Whether an id is that of a run. */
    public boolean isRun(String id) {
        return segments().contains(id);
    }

    /** The same with a field changed; a dot leads into an inner object, an empty value takes the field away. */
    public LayoutText with(String id, String field, String value) {
        return changed(copy -> copy.entry(id).ifPresent(entry -> put(entry, field, value)));
    }

    public LayoutText withSource(String field, String value) {
        return changed(copy -> put(field.contains(".") ? copy.top : copy.top.withObject("/source"), field, value));
    }

    private static void put(ObjectNode entry, String field, String value) {
        var dot = field.indexOf('.');
        if (dot > 0) {
            put(entry.withObject("/" + field.substring(0, dot)), field.substring(dot + 1), value);
        } else if (value.isBlank()) {
            entry.remove(field);
        } else if (value.matches(COUNT)) {
            entry.put(field, Integer.parseInt(value));
        } else if (value.matches(FACTOR)) {
            entry.put(field, new java.math.BigDecimal(value));
        } else {
            entry.put(field, value);
        }
    }

    /** Place of a run or an appliance in its list, as the reader's refusals name it, such as {@code segments[2]}. */
    public String place(String id) {
        var runs = segments();
        return runs.contains(id)
                ? SEGMENTS + "[" + runs.indexOf(id) + "]"
                : APPLIANCES + "[" + appliances().indexOf(id) + "]";
    }

    /** The same with a run and an appliance added behind a node. */
    public LayoutText branched(String node) {
        return changed(copy -> {
            var end = copy.free("outlet");
            copy.run(node, end);
            copy.appliance(copy.free("appliance"), end, "100000 btu/h", "5 inwc", "14 inwc");
        });
    }

    /** The same with a run cut in two, so that a branch can leave in the middle. */
    public LayoutText split(String id) {
        return changed(copy -> copy.entry(id).ifPresent(entry -> {
            var node = copy.free("tee");
            var to = entry.path("to").asText();
            entry.put("to", node);
            copy.run(node, to);
        }));
    }

    /** The same without a run and all that hangs on it, or without an appliance and the run that leads to it alone. */
    public LayoutText without(String id) {
        if (!isRun(id)) {
            return changed(copy -> copy.removeAppliance(id));
        }
        return changed(copy -> copy.entry(id).ifPresent(entry -> {
            var end = entry.path("to").asText();
            copy.remove(SEGMENTS, other -> other.path("id").asText().equals(id));
            copy.removeBehind(end);
        }));
    }

    private void removeAppliance(String id) {
        var node = get(id, "node");
        remove(APPLIANCES, entry -> entry.path("id").asText().equals(id));
        var used = entries(APPLIANCES).stream()
                        .anyMatch(entry -> entry.path("node").asText().equals(node))
                || entries(SEGMENTS).stream()
                        .anyMatch(entry -> entry.path("from").asText().equals(node));
        if (!used) {
            remove(SEGMENTS, entry -> entry.path("to").asText().equals(node));
        }
    }

    private void removeBehind(String node) {
        remove(APPLIANCES, entry -> entry.path("node").asText().equals(node));
        for (var next : entries(SEGMENTS)) {
            if (next.path("from").asText().equals(node)) {
                remove(SEGMENTS, entry -> entry.equals(next));
                removeBehind(next.path("to").asText());
            }
        }
    }

    private void remove(String list, java.util.function.Predicate<JsonNode> gone) {
        var kept = entries(list).stream().filter(gone.negate()).toList();
        top.putArray(list).addAll(kept);
    }

    private void run(String from, String to) {
        var entry = list(SEGMENTS).addObject();
        entry.put("id", free("run")).put("from", from).put("to", to);
        entry.put("material", "steel-schedule-40").put("size", "3/4").put("length", "10 ft");
    }

    private void appliance(String id, String node, String input, String minimum, String maximum) {
        var entry = list(APPLIANCES).addObject();
        entry.put("id", id).put("node", node).put("input", input);
        entry.put("minimum", minimum).put("maximum", maximum);
    }

    private String free(String stem) {
        var used = new ArrayList<String>();
        entries(SEGMENTS).forEach(entry -> {
            used.add(entry.path("id").asText());
            used.add(entry.path("to").asText());
        });
        used.addAll(appliances());
        var number = 1;
        while (used.contains(stem + "-" + number)) {
            number++;
        }
        return stem + "-" + number;
    }

    private LayoutText changed(Consumer<LayoutText> change) {
        var copy = new LayoutText(top.deepCopy());
        change.accept(copy);
        return copy;
    }

    @Override
    public String toString() {
        return top.toString();
    }
}
