package fairflame.document;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * The data of a paper as a file that people can read too. Fields, order and digits are those of the canonical form; only
 * white space is added, so that taking it out again gives the sealed bytes.
 */
public final class JsonData {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private JsonData() {}

    /** Canonical bytes set out on lines that end with a line feed, whatever the machine. */
    public static byte[] readable(byte[] canonical) {
        var indent = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        try {
            var text = MAPPER.writer(printer).writeValueAsString(MAPPER.readTree(canonical));
            return (text + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalArgumentException("not canonical JSON", e);
        }
    }
}
