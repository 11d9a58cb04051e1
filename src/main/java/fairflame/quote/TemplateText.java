package fairflame.quote;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Strict reading of template files, and the words in braces in them. */
public final class TemplateText {
    private static final Pattern HOLE = Pattern.compile("\\{([a-z]+)}");
    private static final ObjectMapper YAML = YAMLMapper.builder(
                    YAMLFactory.builder().build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private TemplateText() {}

    /** Reads YAML into a record; a field too many, too few or twice is refused with its place. */
    public static <T> T read(String file, String yaml, Class<T> shape) {
        try {
            @Nullable T read = YAML.readValue(yaml, shape);
            if (read == null) {
                throw Refusal.missing("content", "YAML as in the sample").at(file);
            }
            return read;
        } catch (JsonMappingException e) {
            throw refusal(e, e.getCause() instanceof Refusal inner ? inner : malformed(e))
                    .at(file);
        } catch (JsonProcessingException e) {
            throw malformed(e).at(file);
        }
    }

    /** The text with every word in braces replaced; a word that nobody fills in is refused. */
    public static String fill(String text, Map<String, String> words) {
        return HOLE.matcher(text).replaceAll(hole -> {
            var word = words.get(hole.group(1));
            if (word == null) {
                throw unknownWord(hole.group(), words.keySet());
            }
            return Matcher.quoteReplacement(word);
        });
    }

    /** Refuses words in braces that are not among these. */
    public static void check(String text, Set<String> allowed) {
        HOLE.matcher(text).results().forEach(hole -> {
            if (!allowed.contains(hole.group(1))) {
                throw unknownWord(hole.group(), allowed);
            }
        });
    }

    private static Refusal unknownWord(String word, Set<String> allowed) {
        return Refusal.unknown("word in braces", word, new TreeSet<>(allowed).toString());
    }

    private static Refusal refusal(JsonMappingException e, Refusal refusal) {
        var path = new StringBuilder();
        for (var step : e.getPath()) {
            if (step.getFieldName() == null) {
                path.append('[').append(step.getIndex() + 1).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return path.isEmpty() ? refusal : refusal.at(path.toString());
    }

    private static Refusal malformed(JsonProcessingException e) {
        var at = e.getLocation();
        var line = at == null ? "" : " line " + at.getLineNr();
        return Refusal.malformed("YAML" + line, e.getOriginalMessage(), "YAML with the fields of the sample");
    }
}
