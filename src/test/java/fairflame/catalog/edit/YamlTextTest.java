package fairflame.catalog.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class YamlTextTest {
    private static final String RATES = """
            # What an hour costs
            hourly:
              T: 145.00   # technician
              G: 150.00
            trip: {near: 80.00, far: 120.00}
            steps:
              - {from: 0.00, markup: 100}
              # dear parts
              - {from: 25.00, markup: 50}   # half
            # kinds
            taxable: [part, consumable]
            address:
              - 18 Quay Street
              - Larkwell
            text: >-
              Words that are
              folded.
            # the end
            source: mine
            """;

    /** Texts that a reader of YAML likes to take for something else. */
    private static final List<String> HOSTILE = List.of(
            "plain words",
            "14.50",
            "0417",
            "1_000",
            "0x1F",
            "yes",
            "null",
            "~",
            "- dash",
            "a: b",
            "a #b",
            "it's \"so\"",
            "{brace} [bracket], comma",
            "ends:",
            "¿Qué pasó con el calentador? Año 2026",
            "two\nlines",
            "first\n\n  indented third",
            "back\\slash \t tab",
            "*star &and !bang %per @at `tick",
            "😀 beyond the first plane",
            "a  double  blank and a very long line that goes on and on until it has to be broken somewhere in the"
                    + " middle because nobody reads lines of such a length with pleasure, least of all on a phone");

    private static final ObjectMapper READER = YAMLMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private static String set(String text, Spot spot, String value) {
        var yaml = YamlText.parse("f.yaml", text);
        return yaml.with(FieldEdit.set(spot, yaml.at(spot).orElseThrow(), value));
    }

    @Test
    void aValueChangesAndNothingElse() {
        assertThat(set(RATES, Spot.of("hourly", "T"), "149.50")).isEqualTo(RATES.replace("145.00", "149.50"));
        assertThat(set(RATES, Spot.of("trip", "far"), "125.00")).isEqualTo(RATES.replace("120.00", "125.00"));
        assertThat(set(RATES, Spot.of("steps", "1", "markup"), "55")).isEqualTo(RATES.replace("50}", "55}"));
    }

    @Test
    void aFoldedTextStaysFoldedAndTheRemarkBehindItStays() {
        var changed = set(RATES, Spot.of("text"), "Other words that somebody thought of.");
        assertThat(changed).contains("text: >-\n  Other words that somebody thought of.\n# the end\nsource: mine");
    }

    @Test
    void aListOfTextsChangesByLine() {
        assertThat(set(RATES, Spot.of("taxable"), "part\nlabour")).contains("# kinds\ntaxable: [part, labour]\n");
        assertThat(set(RATES, Spot.of("address"), "18 Quay Street\nSecond floor\nLarkwell"))
                .contains("address:\n  - 18 Quay Street\n  - Second floor\n  - Larkwell\ntext:");
    }

    @Test
    void anEntryComesAtTheEndInTheMiddleOrAtTheFront() {
        var yaml = YamlText.parse("f.yaml", RATES);
        var step = YamlText.entry(Map.of("from", "50.00"));
        assertThat(yaml.with(FieldEdit.added(Spot.of("steps", "2"), step)))
                .contains("markup: 50}   # half\n  - {from: 50.00}\n# kinds");
        assertThat(yaml.with(FieldEdit.added(Spot.of("steps", "1"), step)))
                .contains("markup: 100}\n  - {from: 50.00}\n  # dear parts\n  - {from: 25");
        assertThat(yaml.with(FieldEdit.added(Spot.of("steps", "0"), step)))
                .contains("steps:\n  - {from: 50.00}\n  - {from: 0.00");
    }

    @Test
    void aFieldComesAndGoes() {
        var grown = YamlText.parse("f.yaml", RATES).with(FieldEdit.added(Spot.of("hourly", "E"), "160.00"));
        assertThat(grown).contains("  G: 150.00\n  E: 160.00\ntrip");
        var braces = YamlText.parse("f.yaml", RATES).with(FieldEdit.added(Spot.of("trip", "island"), "168.00"));
        assertThat(braces).contains("trip: {near: 80.00, far: 120.00, island: 168.00}\n");
        assertThat(YamlText.parse("f.yaml", grown).with(FieldEdit.removed(Spot.of("hourly", "E"), "160.00")))
                .isEqualTo(RATES);
        assertThat(YamlText.parse("f.yaml", braces).with(FieldEdit.removed(Spot.of("trip", "island"), "168.00")))
                .isEqualTo(RATES);
        assertThat(YamlText.parse("f.yaml", RATES).with(FieldEdit.removed(Spot.of("trip", "near"), "80.00")))
                .contains("trip: {far: 120.00}\n");
    }

    @Test
    void anEntryGoesWithItsLineAndTheRemarksOfOthersStay() {
        var yaml = YamlText.parse("f.yaml", RATES);
        var gone = yaml.with(FieldEdit.removed(
                Spot.of("steps", "0"), yaml.at(Spot.of("steps", "0")).orElseThrow()));
        assertThat(gone).contains("steps:\n  # dear parts\n  - {from: 25.00, markup: 50}   # half\n");
    }

    @Test
    void aChangeOfWhatIsNoLongerThereIsRefused() {
        var yaml = YamlText.parse("f.yaml", RATES);
        assertThatThrownBy(() -> yaml.with(FieldEdit.set(Spot.of("hourly", "T"), "140.00", "150.00")))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("f.yaml, hourly, T")
                .hasMessageContaining("145.00")
                .hasMessageContaining("140.00");
        assertThatThrownBy(() -> yaml.with(FieldEdit.added(Spot.of("hourly", "T"), "150.00")))
                .isInstanceOf(Refusal.NotAllowed.class);
    }

    @Test
    void linesEndAsTheFileHasThem() {
        var windows = RATES.replace("\n", "\r\n");
        var changed = YamlText.parse("f.yaml", windows).with(FieldEdit.added(Spot.of("hourly", "E"), "160.00"));
        assertThat(changed).contains("  G: 150.00\r\n  E: 160.00\r\ntrip");
        assertThat(changed.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }

    static List<Path> shipped() throws IOException {
        try (var catalog = Files.walk(Path.of("catalog-sample"));
                var templates = Files.walk(Path.of("templates"))) {
            return java.util.stream.Stream.concat(catalog, templates)
                    .filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    /** Another reader than the one that edits has to see exactly the one value changed, and every remark stays. */
    @ParameterizedTest
    @MethodSource("shipped")
    void anyValueOfTheSampleTakesAnyText(Path file) throws IOException {
        var text = Files.readString(file);
        var leaves = YamlText.parse(file.toString(), text).leaves().stream()
                .filter(leaf -> !leaf.spot().last().equals("id"))
                .toList();
        var seed = 20_261_125L + file.toString().length();
        var random = new Random(seed);
        for (int round = 0; round < 25; round++) {
            var leaf = leaves.get(random.nextInt(leaves.size()));
            var value = HOSTILE.get(random.nextInt(HOSTILE.size()));
            if (leaf.lines() && value.contains("\n")) {
                continue;
            }
            var told = "seed " + seed + " round " + round + " " + file + " " + leaf.spot() + " <- " + value;
            var changed = set(text, leaf.spot(), value);
            assertThat(tree(changed)).as(told).isEqualTo(expected(text, leaf, value));
            assertThat(remarks(changed)).as(told).isEqualTo(remarks(text));
            assertThat(tree(set(changed, leaf.spot(), leaf.value()))).as(told).isEqualTo(tree(text));
        }
    }

    private static JsonNode tree(String text) throws JsonProcessingException {
        return texts(READER.readTree(text));
    }

    /** Numbers and answers as the text they were written as, because the shop's readers take them so. */
    private static JsonNode texts(JsonNode node) {
        if (node.isObject()) {
            var copy = READER.createObjectNode();
            node.fields().forEachRemaining(field -> copy.set(field.getKey(), texts(field.getValue())));
            return copy;
        }
        if (node.isArray()) {
            var copy = READER.createArrayNode();
            node.forEach(item -> copy.add(texts(item)));
            return copy;
        }
        var text = node.asText();
        var answer = text.equals("true") ? "yes" : text.equals("false") ? "no" : text;
        return READER.getNodeFactory().textNode(answer);
    }

    private static JsonNode expected(String text, Leaf leaf, String value) throws JsonProcessingException {
        var root = tree(text);
        var at = root;
        for (var step : leaf.spot().outer().steps()) {
            at = child(at, step);
        }
        var factory = READER.getNodeFactory();
        JsonNode now = factory.textNode(value);
        if (leaf.lines()) {
            now = factory.arrayNode().add(value);
        }
        ((ObjectNode) at).set(leaf.spot().last(), now);
        return root;
    }

    private static JsonNode child(JsonNode node, String step) {
        if (node.isObject()) {
            return node.get(step);
        }
        return step.matches("\\d+") ? node.get(Integer.parseInt(step)) : withId(node, step);
    }

    private static JsonNode withId(JsonNode list, String id) {
        for (var item : list) {
            if (item.path("id").asText().equals(id)) {
                return item;
            }
        }
        throw new IllegalArgumentException(id);
    }

    private static List<String> remarks(String text) {
        var remarks = new ArrayList<String>();
        text.lines().map(String::strip).filter(line -> line.startsWith("#")).forEach(remarks::add);
        return remarks;
    }
}
