package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import fairflame.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutReaderTest {
    private static final Path FORMATS = Path.of("docs/formats");

    private static Layout read(String json) {
        return new LayoutReader(Sites.TABLES).read(json);
    }

    private static String example() throws IOException {
        return Files.readString(FORMATS.resolve("layout.example.json"));
    }

    @Test
    void theExampleIsReadWhole() throws IOException {
        var layout = read(example());
        assertEquals("Saltgrass Lane 12, pool pad and house", layout.site());
        assertEquals(1030, layout.gas().heatingValue().btuPerCubicFoot());
        assertThat(layout.gas().assumed()).isEmpty();
        assertEquals(310, layout.altitude().feet());
        assertEquals(7.4, layout.source().pressure().inchesWater());
        assertEquals(7, layout.source().underLoad().inchesWater());
        assertEquals(630, layout.source().capacity().orElseThrow().cubicFeetPerHour());
        assertEquals(
                List.of("S1", "S2", "S3", "S4"),
                layout.segments().stream().map(Segment::id).toList());
        var line = layout.segment("S2");
        assertEquals(new Pipe(Material.STEEL_SCHEDULE_40, "1"), line.pipe());
        assertEquals(62, line.route().length().feet());
        assertEquals(
                Map.of("ell-90", 6, "tee-branch", 1, "cock", 1),
                line.route().fittings().counts());
        assertEquals(Place.OUTDOORS, line.route().place());
        assertEquals(Place.INDOORS, layout.segment("S3").route().place());
        var heater = layout.appliance("pool-heater");
        assertEquals(400_000, heater.input().btuPerHour());
        assertEquals(5, heater.inlet().minimum().inchesWater());
        assertEquals(10.5, heater.inlet().maximum().inchesWater());
        assertEquals(Place.BURIED, heater.ownLine().orElseThrow().place());
        assertEquals(0.5, layout.drop().low().inchesWater());
        assertEquals(1, layout.drop().elevated().psi(), 1e-12);
        assertThat(layout.diversity()).isEmpty();
    }

    @Test
    void theExampleKeepsTheSchema() throws IOException {
        assertThat(problems(example())).isEmpty();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"length\": \"62ft\" | \"length\": 62",
                "\"length\": \"62ft\" | \"length\": \"62\"",
                "\"material\": \"copper-l\" | \"material\": \"lead\"",
                "\"kind\": \"meter\" | \"kind\": \"bottle\"",
                "\"ell-90\": 6 | \"elbow\": 6",
                "\"site\" | \"place\"",
            })
    void theSchemaRefusesWhatTheReaderRefuses(String what, String by) throws IOException {
        var broken = example().replace(what, by);
        assertThat(problems(broken)).isNotEmpty();
        assertThatThrownBy(() -> read(broken)).isInstanceOf(Refusal.class);
    }

    private static List<String> problems(String json) throws IOException {
        var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(FORMATS.resolve("layout.schema.json")));
        return schema.validate(new ObjectMapper().readTree(json)).stream()
                .map(Object::toString)
                .toList();
    }

    @ParameterizedTest(name = "{0} -> {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                // measures
                "\"62ft\" | \"62\" | field segments[1].length: unit of length in '62' 'nothing' is refused",
                "\"62ft\" | \"0ft\" | segments[1]: length '0 ft' is refused; allowed: above 0 and up to 5000 ft",
                "\"62ft\" | \"-5ft\" | field segments[1].length: length '-5.0 ft' is refused",
                "\"62ft\" | \"6000ft\" | segments[1]: length '6000 ft' is refused",
                "\"62ft\" | \"62psi\" | field segments[1].length: unit of length 'psi' is refused; allowed: ft, in, m, mm",
                "\"62ft\" | 62 | field segments[1].length '62' is refused; allowed: text in quotes",
                "\"62ft\" | \"\" | field segments[1].length '' is refused",
                "\"400000btu/h\" | \"400000\" | field appliances[0].input: unit of heat rate",
                "\"400000btu/h\" | \"400btu/h\" | appliances[0]: input '400 Btu/h' is refused; allowed: 1,000 to 50,000,000",
                "\"400000btu/h\" | \"4e5btu/h\" | field appliances[0].input: unit of heat rate 'e5btu/h'",
                "\"5inwc\" | \"15inwc\" | appliances[0]: minimum inlet pressure '15 in w.c.' is refused",
                "\"7.4inwc\" | \"0.5inwc\" | source: delivery pressure '0.5 in w.c.' is refused; allowed: 1 in w.c. to 20 psi",
                "\"7.4inwc\" | \"30psi\" | source: delivery pressure '30 psi' is refused",
                "\"firing\": \"7inwc\" | \"firing\": \"8inwc\" | source: delivery pressure while firing '8 in w.c.' is refused",
                "\"630cfh\" | \"0cfh\" | source: capacity of the source '0' is refused",
                "\"630cfh\" | \"630ft\" | field source.capacity: capacity '630ft' is refused",
                "\"310ft\" | \"13000ft\" | altitude '13000 ft' is refused",
                "0.60 | \"0.60\" | field gas.specificGravity '\"0.60\"' is refused; allowed: a plain number",
                "0.60 | 0.2 | gas: specific gravity '0.2' is refused",
                "\"1030btu/ft3\" | \"9btu/ft3\" | field gas.heatingValue: heating value",
                // names
                "\"size\": \"1\" | \"size\": \"1-3/8\" | field segments[1].size: size of steel-schedule-40 '1-3/8' is refused",
                "\"size\": \"1\" | \"size\": \"big\" | field segments[1].size: pipe size 'big' is refused",
                "copper-l | gold | field segments[3].material: material 'gold' is refused; allowed: steel-schedule-40",
                "\"ell-90\": 6 | \"elbow\": 6 | segments[1].fittings: fitting 'elbow' is refused; allowed: angle-valve",
                "\"ell-90\": 6 | \"ell-90\": 6.5 | field segments[1].fittings.ell-90 '6.5' is refused; allowed: a whole number",
                "\"ell-90\": 6 | \"ell-90\": 201 | segments[1]: number of ell-90 '201' is refused",
                "\"buried\" | \"attic\" | field appliances[0].ownLine.place: place 'attic' is refused",
                "\"natural\" | \"town\" | field gas.fuel: fuel 'town' is refused; allowed: natural, propane",
                "\"kind\": \"meter\" | \"kind\": \"well\" | field source.kind: kind of source 'well' is refused",
                // structure
                "\"id\": \"S2\" | \"id\": \"S1\" | id 'S1' is refused; allowed: an id of its own",
                "\"id\": \"S2\" | \"id\": \"range\" | id 'range' is refused",
                "\"from\": \"meter\" | \"from\": \"street\" | orphan segment 'S1' is refused",
                "\"to\": \"closet\" | \"to\": \"pad\" | second feed of node pad 'S3' is refused",
                "\"to\": \"kitchen\" | \"to\": \"closet\" | cycle 'S4' is refused; allowed: a segment between two different",
                "\"to\": \"kitchen\" | \"to\": \"meter\" | cycle through the source 'S4' is refused",
                "\"node\": \"kitchen\" | \"node\": \"attic\" | orphan appliance range at node 'attic' is refused",
                "\"node\": \"kitchen\" | \"node\": \"closet\" | segment without appliance 'S4' is refused",
                "\"regulators\": [] | \"regulators\": [{\"id\":\"R\",\"before\":\"S9\",\"outlet\":\"7inwc\",\"capacity\":\"9cfh\"}]"
                        + " | place of regulator R, before 'S9' is refused",
                "\"regulators\": [] | \"regulators\": {} | field regulators 'object' is refused; allowed: a list",
                "\"site\": | \"name\": | field 'name' is refused; allowed: altitude, appliances",
                "\"gas\": { | \"gas\": { \"smell\": \"no\", | field 'gas.smell' is refused",
                "\"altitude\": \"310ft\", | \"altitude\": \"310ft\", \"altitude\": \"310ft\", | JSON at line 4",
                "\"kind\": \"meter\", | '' | field source.kind 'nothing' is refused; allowed: text in quotes",
            })
    void whatIsWrongIsRefusedByItsField(String what, String by, String message) throws IOException {
        var text = example();
        assertThat(text).contains(what);
        assertThatThrownBy(() -> read(text.replaceFirst(
                        java.util.regex.Pattern.quote(what), java.util.regex.Matcher.quoteReplacement(by))))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(message);
    }

    @Test
    void textThatIsNoLayoutIsRefused() {
        for (var json : List.of("", "[]", "{", "3", "{} {}", "null")) {
            assertThatThrownBy(() -> read(json)).as(json).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void aRingOfSegmentsAwayFromTheSourceIsACycle() {
        assertThatThrownBy(() -> Sites.site()
                        .pipe("S1", "m", "a", "1", 10)
                        .pipe("S2", "b", "c", "1", 10)
                        .pipe("S3", "c", "b", "1", 10)
                        .appliance("heater", "a", 100_000, "4inwc")
                        .build())
                .hasMessageContaining("cycle 'S2' is refused; allowed: a tree");
    }

    @Test
    void emptyListsAreRefused() {
        assertThatThrownBy(
                        () -> Sites.site().appliance("h", "m", 100_000, "4inwc").build())
                .hasMessageContaining("segments");
        assertThatThrownBy(() -> Sites.site().pipe("S1", "m", "a", "1", 10).build())
                .hasMessageContaining("appliances");
    }

    @Test
    void twoRegulatorsInOnePlaceAreRefused() {
        assertThatThrownBy(() -> Sites.site()
                        .pipe("S1", "m", "a", "1", 10)
                        .appliance("h", "a", 100_000, "4inwc")
                        .regulator("R1", "h", "7inwc", "200cfh")
                        .regulator("R2", "h", "7inwc", "200cfh")
                        .build())
                .hasMessageContaining("second regulator before 'h' is refused");
    }

    @Test
    void tankRegulatorsMayBeRatedInHeat() throws IOException {
        var text = example().replace("\"meter\",\n    \"node\"", "\"tank-regulator\",\n    \"node\"");
        var layout = read(text.replace("630cfh", "515kbtu/h"));
        assertEquals(Source.Kind.TANK_REGULATOR, layout.source().kind());
        assertEquals(500, layout.source().capacity().orElseThrow().cubicFeetPerHour(), 1e-9);
    }

    @Test
    void regulatorsAndDiversityAreRead() throws IOException {
        var text = example()
                .replace("\"regulators\": []", """
                        "regulators": [{"id": "R1", "before": "S2", "outlet": "9inwc", "capacity": "500cfh"},
                          {"id": "R2", "before": "range", "outlet": "6inwc", "capacity": "70kbtu/h", "minimumInlet": "6.2inwc"}]
                        """)
                .replace(
                        "\"segments\"",
                        "\"diversity\": {\"share\": \"80%\", \"reason\": \"engineer's letter of May\"}, \"segments\"");
        var layout = read(text);
        assertEquals(
                9 + 0.75 * 27.67990, layout.regulators().get(0).minimumInlet().inchesWater(), 1e-4);
        assertEquals(6.2, layout.regulators().get(1).minimumInlet().inchesWater());
        assertEquals(0.8, layout.diversity().orElseThrow().share());
        assertThat(problems(text)).isEmpty();
    }

    @Test
    void diversityWithoutAReasonIsRefused() {
        assertThatThrownBy(() -> new Diversity(0.8, "because"))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("reason of the diversity");
        assertThatThrownBy(() -> new Diversity(0, "because the engineer said so"))
                .isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> new Diversity(1.01, "because the engineer said so"))
                .isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void aRegulatorThatWouldRaisePressureIsRefused() throws IOException {
        var text = example().replace("\"regulators\": []", """
                "regulators": [{"id": "R1", "before": "S2", "outlet": "9inwc", "capacity": "500cfh", "minimumInlet": "8inwc"}]
                """);
        assertThatThrownBy(() -> read(text)).hasMessageContaining("regulators[0]: minimum inlet pressure '8 in w.c.'");
    }
}
