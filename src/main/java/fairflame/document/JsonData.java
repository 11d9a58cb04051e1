package fairflame.document;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;

/** The data of a paper as a file that people can read too: the same fields and digits as the canonical form. */
public final class JsonData {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private JsonData() {}

    /** Canonical bytes set out on lines. */
    public static byte[] readable(byte[] canonical) {
        try {
            return MAPPER.writeValueAsBytes(MAPPER.readTree(canonical));
        } catch (IOException e) {
            throw new IllegalArgumentException("not canonical JSON", e);
        }
    }
}
