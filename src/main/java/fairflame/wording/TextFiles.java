package fairflame.wording;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reads pairs of text from the folder of a language: every file whose name begins with {@code texts}, such as
 * {@code es/texts.yaml} or {@code es/texts-parts.yaml}. Each is a list of rows {@code en: ..., es: ...}.
 */
public final class TextFiles {
    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private TextFiles() {}

    /**
     * The pairs of a language in a folder's files; a row that is not whole, or an English text that stands there twice
     * with different words, is refused with its place.
     *
     * @param files text by name, names relative to the folder
     */
    public static List<Pair> read(Map<String, String> files, Language language) {
        var pairs = new ArrayList<Pair>();
        var seen = new HashMap<String, String>();
        new TreeMap<>(files).forEach((name, text) -> {
            if (isOf(name, language)) {
                rows(name, text, language, pairs, seen);
            }
        });
        return List.copyOf(pairs);
    }

    /** Whether a file belongs to a language and not to the folder's own rows. */
    public static boolean isText(String name) {
        for (var language : Language.values()) {
            if (isOf(name, language)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOf(String name, Language language) {
        return name.matches(language.code() + "/texts[a-z0-9-]*\\.yaml");
    }

    private static void rows(String name, String text, Language language, List<Pair> pairs, Map<String, String> seen) {
        var root = tree(name, text);
        if (!root.isArray()) {
            throw Refusal.malformed("content", root.getNodeType(), "a list of rows, each beginning with '- '")
                    .at(name);
        }
        for (int i = 0; i < root.size(); i++) {
            try {
                var pair = pair(root.get(i), language.code());
                var before = seen.put(pair.english(), pair.other());
                if (before != null && !before.equals(pair.other())) {
                    throw Refusal.notAllowed("text", pair.english(), "each English text with one translation");
                }
                pairs.add(pair);
            } catch (Refusal refusal) {
                throw refusal.at(name + " row " + (i + 1));
            }
        }
    }

    private static JsonNode tree(String name, String text) {
        try {
            return YAML.readTree(text);
        } catch (JsonProcessingException e) {
            var line = e.getLocation() == null ? "" : " line " + e.getLocation().getLineNr();
            throw Refusal.malformed("YAML", e.getOriginalMessage(), "rows with 'en:' and the other language")
                    .at(name + line);
        }
    }

    private static Pair pair(JsonNode row, String code) {
        var names = new TreeSet<String>();
        row.fieldNames().forEachRemaining(names::add);
        var wanted = Set.of(Language.ENGLISH.code(), code);
        if (!names.equals(wanted)) {
            throw Refusal.malformed("fields of a row", names, new TreeSet<>(wanted).toString());
        }
        return new Pair(row.path("en").asText().strip(), row.path(code).asText().strip());
    }
}
