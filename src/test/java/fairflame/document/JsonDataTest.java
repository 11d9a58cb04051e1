package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import fairflame.agreement.CanonicalForm;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonDataTest {
    private static String written(Record thing) {
        return new String(JsonData.readable(CanonicalForm.write(thing)), StandardCharsets.UTF_8);
    }

    @Test
    void takingTheWhiteSpaceOutGivesTheCanonicalBytes() throws IOException {
        var mapper = new JsonMapper();
        for (var thing : List.<Record>of(
                WetSwitches.quote(),
                WetSwitches.signed(),
                GasLine.invoice(),
                Unsettled.gasSmell(),
                Unsettled.quote())) {
            var compact = mapper.writeValueAsString(mapper.readTree(JsonData.readable(CanonicalForm.write(thing))));
            assertThat(compact.getBytes(StandardCharsets.UTF_8)).isEqualTo(CanonicalForm.write(thing));
        }
    }

    @Test
    void carriesMoneyAsTextAndIsSetOutInLines() {
        assertThat(written(WetSwitches.quote()))
                .contains("389.86\"")
                .contains("\n  \"number\" : \"Q-2026-0001\"")
                .doesNotContain("\r")
                .endsWith("}\n");
    }

    @Test
    void theSameRecordGivesTheSameBytes() {
        assertThat(written(GasLine.quote())).isEqualTo(written(GasLine.quote()));
    }
}
