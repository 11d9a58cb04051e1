package fairflame.agreement;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.Refusal;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.TreeSet;

/**
 * JSON text in the one form of RFC 8785 (JSON Canonicalization Scheme): names sorted by UTF-16 units, no white space,
 * the shortest escapes, UTF-8. Numbers are whole numbers only; amounts and decimals are text.
 */
final class CanonicalText {
    private static final ObjectMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(64).build())
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private CanonicalText() {}

    static byte[] write(JsonNode tree) {
        var text = new StringBuilder();
        append(text, tree);
        try {
            var bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
            var exact = new byte[bytes.remaining()];
            bytes.get(exact);
            return exact;
        } catch (CharacterCodingException e) {
            throw Refusal.malformed("text", "half a character", "whole Unicode characters");
        }
    }

    /** Reads any JSON that has no name twice; whether it is canonical shows when it is written again. */
    static JsonNode read(byte[] bytes) {
        try {
            // Decoded first and strictly: what is no UTF-8 is refused and never silently replaced.
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return MAPPER.readTree(text);
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("JSON", e.getOriginalMessage(), "well-formed JSON with each name once");
        } catch (IOException e) {
            throw Refusal.malformed("JSON", "bytes that are no UTF-8", "UTF-8");
        }
    }

    private static void append(StringBuilder text, JsonNode node) {
        switch (node.getNodeType()) {
            case OBJECT -> appendObject(text, node);
            case ARRAY -> {
                var separator = "[";
                for (var item : node) {
                    text.append(separator);
                    append(text, item);
                    separator = ",";
                }
                text.append(separator.equals("[") ? "[]" : "]");
            }
            case STRING -> appendString(text, node.textValue());
            case NUMBER -> appendNumber(text, node);
            case BOOLEAN, NULL -> text.append(node.asText());
            default -> throw Refusal.malformed("JSON", node.getNodeType(), "objects, lists, text, whole numbers");
        }
    }

    private static void appendObject(StringBuilder text, JsonNode node) {
        var names = new TreeSet<String>();
        node.fieldNames().forEachRemaining(names::add);
        var separator = "{";
        for (var name : names) {
            text.append(separator);
            appendString(text, name);
            text.append(':');
            append(text, node.required(name));
            separator = ",";
        }
        text.append(separator.equals("{") ? "{}" : "}");
    }

    private static void appendNumber(StringBuilder text, JsonNode node) {
        if (!node.isIntegralNumber()) {
            throw Refusal.malformed("number", node, "a whole number; decimals are text");
        }
        text.append(node.bigIntegerValue());
    }

    private static void appendString(StringBuilder text, String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            var c = value.charAt(i);
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\b' -> text.append("\\b");
                case '\t' -> text.append("\\t");
                case '\n' -> text.append("\\n");
                case '\f' -> text.append("\\f");
                case '\r' -> text.append("\\r");
                default -> {
                    if (c < ' ') {
                        text.append(String.format("\\u%04x", (int) c));
                    } else {
                        text.append(c);
                    }
                }
            }
        }
        text.append('"');
    }
}
