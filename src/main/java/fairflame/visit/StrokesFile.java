package fairflame.visit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.Refusal;
import fairflame.store.TextFile;
import java.nio.file.Path;
import java.util.List;

/** Reads a drawn signature: a JSON list of lines, each a list of x,y pairs in thousandths of the pad's width. */
public final class StrokesFile {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private StrokesFile() {}

    /** The strokes in a file; a refusal names the file. */
    public static List<List<Integer>> read(Path file) {
        try {
            return parse(TextFile.read(file));
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    /** The strokes in a text. */
    static List<List<Integer>> parse(String json) {
        try {
            return MAPPER.readValue(json, new TypeReference<List<List<Integer>>>() {});
        } catch (JsonProcessingException e) {
            throw Refusal.malformed("drawn signature", e.getOriginalMessage(), "a list of lists of whole numbers");
        }
    }
}
