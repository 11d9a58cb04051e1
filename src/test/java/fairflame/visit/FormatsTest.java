package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schemas say what the readers accept, checked by a general JSON Schema validator. */
class FormatsTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Path DEMO = Path.of("src/main/resources/fairflame/demo");
    private static final Path FORMATS = Path.of("docs/formats");

    @ParameterizedTest
    @ValueSource(strings = {"visit-1", "visit-2", "visit-3", "visit-4"})
    void aDemoVisitHoldsToItsSchemaAndIsRead(String name) throws IOException {
        var text = Files.readString(DEMO.resolve(name + ".json"));
        assertThat(faults("visit", text)).isEmpty();
        assertThat(Pad.LIBRARY.visits().read(text).id()).startsWith("V-2026-");
    }

    @ParameterizedTest
    @ValueSource(strings = {"completion-1", "completion-2"})
    void aDemoCompletionHoldsToItsSchemaAndIsRead(String name) throws IOException {
        var text = Files.readString(DEMO.resolve(name + ".json"));
        assertThat(faults("completion", text)).isEmpty();
        assertThat(CompletionFile.read(text).leadsRemoved()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"visit", "completion"})
    void theExampleBesideASchemaHoldsToIt(String name) throws IOException {
        assertThat(faults(name, Files.readString(FORMATS.resolve(name + ".example.json"))))
                .isEmpty();
    }

    @Test
    void whatTheSchemaForbidsTheReaderRefuses() throws IOException {
        var visit = Files.readString(DEMO.resolve("visit-1.json"));
        for (var broken : new String[] {
            visit.replace("\"fairflame-visit-1\"", "\"fairflame-visit-9\""),
            visit.replace("\"natural\"", "\"coal\""),
            visit.replace("\"date\"", "\"day\""),
            visit.replaceFirst("\"G1\": \"no\"", "\"G1\": \"maybe\""),
            visit.replace("\"ageYears\": 7", "\"ageYears\": -7")
        }) {
            assertThat(broken).isNotEqualTo(visit);
            assertThat(faults("visit", broken)).isNotEmpty();
            assertThat(refused(broken)).isTrue();
        }
    }

    private static boolean refused(String text) {
        try {
            Pad.LIBRARY.visits().read(text);
            return false;
        } catch (Refusal refusal) {
            return refusal.getMessage().contains("allowed:");
        }
    }

    private static Set<ValidationMessage> faults(String schema, String text) throws IOException {
        JsonNode rules =
                MAPPER.readTree(FORMATS.resolve(schema + ".schema.json").toFile());
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(rules)
                .validate(MAPPER.readTree(text));
    }
}
