package fairflame.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** Unit codes of UN/ECE Recommendations 20 and 21 for the units of the shop's lines. */
final class UnitCodes {
    /** "One" of Recommendation 20: stands for a unit that has no code here. */
    static final String ONE = "C62";

    private static final Map<String, String> CODES = load("/fairflame/document/unit-codes.csv");

    private UnitCodes() {}

    static String of(String unit) {
        return CODES.getOrDefault(unit, ONE);
    }

    private static Map<String, String> load(String resource) {
        try (var stream = UnitCodes.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException("unit codes are not in the program: " + resource);
            }
            var codes = new HashMap<String, String>();
            new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .forEach(line -> {
                        var cells = line.split(",", 3);
                        codes.put(cells[0], cells[1]);
                    });
            return Map.copyOf(codes);
        } catch (IOException e) {
            throw new UncheckedIOException("unit codes cannot be read", e);
        }
    }
}
