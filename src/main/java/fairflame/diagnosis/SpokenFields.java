package fairflame.diagnosis;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fairflame.wording.Wording;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** Which fields of the knowledge files a customer may come to read, and the rows with these fields in a language. */
final class SpokenFields {
    /** By kind of file; nested rows have the fields of their file. */
    private static final Map<String, Set<String>> BY_KIND = Map.of(
            "complaints", Set.of("title", "plain"),
            "circumstances", Set.of("words"),
            "instruments", Set.of("name"),
            "checks", Set.of("title"),
            "gates", Set.of("title", "question", "found", "advice"),
            "causes", Set.of("title", "plain", "remedy", "words", "rests-on"),
            "contradictions", Set.of("words"),
            "doubts", Set.of("words"),
            "verdicts", Set.of("words"));

    /** Words that a check can give are names in the rules; only where a sentence takes one in it is translated. */
    private static final String ANSWERS = "words";

    private static final String CALLED = "named";

    private SpokenFields() {}

    /** The row in the language; a cause goes on answering to its English title in a release. */
    static JsonNode in(Wording wording, String kind, JsonNode row) {
        if (wording.isEnglish() || !row.isObject()) {
            return row;
        }
        var told = walk(row, BY_KIND.getOrDefault(kind, Set.of()), wording::of);
        if (kind.equals("causes") && told instanceof ObjectNode cause) {
            var names = JsonNodeFactory.instance.arrayNode();
            row.path(CALLED).forEach(names::add);
            cause.set(CALLED, names.add(row.path("title").asText()));
        }
        return told;
    }

    /** Hands every spoken text of a row to a listener, and every word that its check can give. */
    static void hear(String kind, JsonNode row, Consumer<String> listener) {
        walk(row, BY_KIND.getOrDefault(kind, Set.of()), text -> {
            listener.accept(text);
            return text;
        });
        if (kind.equals("checks")) {
            for (var word : row.path(ANSWERS).asText("").split(";", -1)) {
                if (!word.isBlank()) {
                    listener.accept(word.strip().replace('-', ' '));
                }
            }
        }
    }

    private static JsonNode walk(JsonNode node, Set<String> spoken, UnaryOperator<String> saying) {
        if (node instanceof ObjectNode object) {
            var told = JsonNodeFactory.instance.objectNode();
            object.properties()
                    .forEach(field -> told.set(
                            field.getKey(),
                            spoken.contains(field.getKey())
                                    ? said(field.getValue(), saying)
                                    : walk(field.getValue(), spoken, saying)));
            return told;
        }
        if (node instanceof ArrayNode list) {
            var told = JsonNodeFactory.instance.arrayNode();
            list.forEach(item -> told.add(walk(item, spoken, saying)));
            return told;
        }
        return node;
    }

    private static JsonNode said(JsonNode node, UnaryOperator<String> saying) {
        if (node instanceof ArrayNode list) {
            var told = JsonNodeFactory.instance.arrayNode();
            list.forEach(item -> told.add(said(item, saying)));
            return told;
        }
        var text = node.asText("").strip();
        return text.isEmpty() ? node : TextNode.valueOf(saying.apply(text));
    }
}
