package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published schemas describe the sample, and refuse what the reader refuses. */
class CatalogSchemaTest {
    private static final YAMLMapper YAML = new YAMLMapper();

    @ParameterizedTest
    @CsvSource({
        "shop.yaml, shop",
        "rates.yaml, rates",
        "ladder.yaml, ladder",
        "unknown-place.yaml, unknown-place",
        "jurisdictions/larkwell.yaml, jurisdiction",
        "jurisdictions/brinefield.yaml, jurisdiction",
        "jurisdictions/osier-bay.yaml, jurisdiction",
        "tasks.yaml, tasks",
        "scopes.yaml, scopes",
        "pairs.yaml, pairs",
        "joints.yaml, joints",
        "warranty.yaml, warranty"
    })
    void theSampleFollowsItsSchemaAndAnUnknownFieldDoesNot(String file, String name) throws IOException {
        var schema = schema(name);
        var sample = YAML.readTree(SampleFolder.files().get(file));
        assertThat(schema.validate(sample)).isEmpty();

        ((ObjectNode) sample).put("misspelt", "x");
        assertThat(schema.validate(sample)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rates.yaml | rates | creditDays: 30 | creditDays: thirty",
                "rates.yaml | rates | standard: 89.00 | standard: -89.00",
                "ladder.yaml | ladder | markup: 75 | markup: -75",
                "tasks.yaml | tasks | per: job | per: day",
                "tasks.yaml | tasks | who: [T] | who: [Z]",
                "tasks.yaml | tasks | permit: none | permit: maybe",
                "scopes.yaml | scopes | devices: pair | devices: all",
                "scopes.yaml | scopes | run: buried | run: flying",
                "jurisdictions/larkwell.yaml | jurisdiction | rounding: nearest | rounding: up",
                "jurisdictions/larkwell.yaml | jurisdiction | minor-part: no | small-part: no",
                "warranty.yaml | warranty | partsMonths: 12 | partsMonths: twelve"
            })
    void schemaAndReaderRefuseTheSame(String file, String name, String from, String to) throws IOException {
        var files = SampleFolder.files();
        var text = files.get(file);
        var at = text.indexOf(from);
        assertThat(at).as(from).isNotNegative();
        files.put(file, text.substring(0, at) + to + text.substring(at + from.length()));

        assertThat(schema(name).validate(tree(files, file))).isNotEmpty();
        assertThat(ShopFiles.problems(files)).isNotEmpty();
    }

    private static JsonNode tree(Map<String, String> files, String file) throws IOException {
        return YAML.readTree(files.get(file));
    }

    private static JsonSchema schema(String name) throws IOException {
        var text = Files.readString(Path.of("docs/formats/catalog/" + name + ".schema.json"));
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }
}
