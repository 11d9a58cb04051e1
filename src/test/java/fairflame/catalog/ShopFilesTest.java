package fairflame.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.wording.Language;
import fairflame.wording.TextFiles;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each refusal of a broken folder: one thing is changed in the sample, and the message names it. */
class ShopFilesTest {
    static Stream<Arguments> brokenFolders() {
        return Stream.of(
                // files and encoding
                without("parts.csv", "file parts.csv"),
                without("shop.yaml", "file shop.yaml"),
                edit("suppliers.csv", text -> "", "suppliers.csv: content 'nothing'"),
                edit("tests.csv", text -> " \n \n", "tests.csv: content"),
                edit(
                        "parts.csv",
                        text -> text.replace("malleable", "mall\uFFFDable"),
                        "parts.csv line 8",
                        "U+FFFD",
                        "UTF-8"),
                edit("rates.yaml", text -> "\0" + text, "rates.yaml line 1", "U+0000"),
                edit("ladder.yaml", text -> text + "\uFEFF", "ladder.yaml line", "U+FEFF"),
                // tables
                edit("parts.csv", text -> text.replaceFirst("cost", "price"), "parts.csv row 1", "column cost"),
                edit("parts.csv", text -> text.replaceFirst("source", "source,colour"), "column 'colour'", "currency"),
                edit("access.csv", text -> text.replaceFirst("source", "source,source"), "column 'source'", "once"),
                edit(
                        "access.csv",
                        text -> text + "AX-X,Title,0.1,,demo,more\n",
                        "access.csv row 13",
                        "6 cells",
                        "more"),
                edit("access.csv", text -> text.split("\n")[0], "access.csv: row below the header"),
                edit("access.csv", text -> text + "AX-X,\"open quote,0.1,,demo\n", "access.csv line", "table"),
                edit(
                        "parts.csv",
                        text -> text.replace("GP-02,", "GP-01,"),
                        "parts.csv row 3, number",
                        "'GP-01'",
                        "row 2"),
                edit("suppliers.csv", text -> text.replace("gantry,G", "tern,G"), "suppliers.csv row 3, id", "'tern'"),
                edit(
                        "suppliers.csv",
                        text -> text.replace(",2\n", ",soon\n"),
                        "row 2, lead_days",
                        "'soon'",
                        "0 to 365"),
                edit("suppliers.csv", text -> text.replace(",2\n", ",400\n"), "row 2, lead_days", "'400'"),
                // parts
                part("1.62,,gantry", "1.62,,nobody", "parts.csv row 2, supplier", "'nobody'", "one of tern"),
                part("1.62", "-1.62", "parts.csv row 2, cost", "'-1.62'", "zero or more"),
                part("1.62", "1.625", "parts.csv row 2, cost", "'1.625'", "two decimals"),
                part("1.62", "$1.62", "parts.csv row 2, cost", "'$1.62'"),
                part("1.62", "", "parts.csv row 2, cost", "'nothing'"),
                part(",no,ft,1.62", ",maybe,ft,1.62", "parts.csv row 2, consumable", "'maybe'", "yes, no"),
                part("ft,1.62,,", "ft,1.62,-2.00,", "parts.csv row 2, list_price", "zero or more"),
                part("gantry,0,,invented", "gantry,many,,invented", "parts.csv row 2, warranty_months", "'many'"),
                edit(
                        "parts.csv",
                        text -> text.replaceFirst("source\n", "source,currency\n")
                                .replaceFirst("for the demo\n", "for the demo,EUR\n"),
                        "parts.csv row 2, currency",
                        "'EUR'",
                        "USD"),
                edit("parts.csv", text -> text.replaceFirst("GP-01", "GP 01!"), "row 2, number", "'GP 01!'"),
                // shop
                yaml("shop.yaml", "USD", "DOLLAR", "shop.yaml, currency", "'DOLLAR'", "ISO 4217"),
                yaml("shop.yaml", "version: Sandpiper catalog 2026-03\n", "", "shop.yaml", "field version"),
                yaml("shop.yaml", "currency: USD", "currency: USD\nowner: me", "shop.yaml", "field 'owner'"),
                // access
                yaml("access.csv", "AX-GAS AX-PANEL AX-ELEC", "AX-NO", "access.csv row 7, needs", "'AX-NO'"),
                edit(
                        "access.csv",
                        text -> text.replace(
                                ",0.25,,invented for the demo\nAX-DRAIN",
                                ",0.25,AX-EXCH,invented for the demo\nAX-DRAIN"),
                        "access.csv row 5, needs",
                        "AX-GAS",
                        "circle"),
                edit("access.csv", text -> text.replace("0.75", "-0.75"), "row 12, hours", "'-0.75'", "0.00 to 40"),
                // rates and ladder
                yaml("rates.yaml", "  T: 145.00\n", "", "rates.yaml, hourly", "hourly rate T"),
                yaml("rates.yaml", "  E: 160.00", "  X: 160.00", "rates.yaml, hourly", "trade 'X'"),
                yaml("rates.yaml", "  E: 160.00", "  E: -160.00", "rates.yaml, hourly, E", "'-160.00'"),
                yaml("rates.yaml", "  E: 160.00\n", "", "tasks.yaml R28, who", "hourly rate of E"),
                yaml("rates.yaml", "currency: USD", "currency: CAD", "rates.yaml, currency", "'CAD'", "USD"),
                yaml("ladder.yaml", "currency: USD", "currency: CAD", "ladder.yaml, currency", "'CAD'"),
                yaml("rates.yaml", "creditDays: 30", "creditDays: thirty", "rates.yaml, creditDays", "'thirty'"),
                yaml(
                        "rates.yaml",
                        "tight-space: 1.15",
                        "tight-space: 0.5",
                        "ownFactors, tight-space",
                        "'0.5'",
                        "1 to 3"),
                yaml(
                        "rates.yaml",
                        "  standard: 89.00\n  outer: 119.00\n  island: 168.00\n",
                        "  {}\n",
                        "rates.yaml, trip"),
                yaml(
                        "rates.yaml",
                        "minimumHours: 1.0",
                        "minimumHours: [1]",
                        "rates.yaml, minimumHours",
                        "single value"),
                yaml("ladder.yaml", "from: 0.00", "from: 1.00", "ladder.yaml, steps", "from 0.00"),
                yaml(
                        "ladder.yaml",
                        "from: 25.00",
                        "from: 4.00",
                        "ladder.yaml, steps 3",
                        "'4.00'",
                        "more than the step before"),
                yaml("ladder.yaml", "markup: 75", "markup: -5", "steps 2, markup", "-5"),
                yaml("ladder.yaml", "markup: 75", "markup: 1/2", "steps 2, markup", "'1/2'"),
                edit("ladder.yaml", text -> "currency: USD\nsteps: 5\nsource: x\n", "ladder.yaml, steps", "a list"),
                // tasks
                yaml(
                        "tasks.yaml",
                        "times: [{hours: 0.15, per: job}]\n    access: [AX-RUN]\n    tests: [H]",
                        "access: [AX-RUN]\n    tests: [H]",
                        "tasks.yaml R00, times",
                        "standard time"),
                yaml("tasks.yaml", "hours: 0.15", "hours: 0", "tasks.yaml R00", "hours", "0.01 to 100"),
                yaml("tasks.yaml", "per: job", "per: day", "tasks.yaml R00", "'day'", "job, piece, foot, fitting"),
                yaml("tasks.yaml", "who: [T]", "who: [Z]", "tasks.yaml R00", "trade 'Z'", "T, T*, G, E, U"),
                yaml("tasks.yaml", "    who: [T]\n", "", "tasks.yaml R00, who", "trade"),
                yaml(
                        "tasks.yaml",
                        "AX-ELEC, AX-PANEL, AX-DRAIN",
                        "AX-LADDER, AX-PANEL, AX-DRAIN",
                        "tasks.yaml R02, access",
                        "'AX-LADDER'"),
                yaml(
                        "tasks.yaml",
                        "role: water-thread-tape",
                        "role: magic-tape",
                        "tasks.yaml R02, needs",
                        "role 'magic-tape'"),
                yaml(
                        "tasks.yaml",
                        "{role: flame-sensor}",
                        "{role: flame-sensor, size: XL}",
                        "tasks.yaml R07, needs",
                        "'XL'"),
                yaml("tasks.yaml", "tests: [H]", "tests: [Q]", "tasks.yaml R00, tests", "test 'Q'"),
                yaml("tasks.yaml", "permit: none", "permit: maybe", "tasks.yaml R00, permit", "'maybe'", "gas-piping"),
                yaml("tasks.yaml", "warranty: labour", "warranty: forever", "tasks.yaml R00, warranty", "'forever'"),
                yaml("tasks.yaml", "absorbs: [R02]", "absorbs: [R99]", "tasks.yaml R03, absorbs", "task 'R99'"),
                yaml(
                        "tasks.yaml",
                        "requires: [switch-dry]",
                        "requires: [luck]",
                        "tasks.yaml R02, requires",
                        "fact 'luck'"),
                yaml(
                        "tasks.yaml",
                        "[N-NOBYPASS, N-WATER, N-HOT]",
                        "[wet]",
                        "tasks.yaml R02, notes",
                        "'wet'",
                        "N-WATER"),
                yaml("tasks.yaml", "- id: R02", "- id: R00", "tasks.yaml R00", "task 'R00'", "only once"),
                yaml(
                        "tasks.yaml",
                        "    plain: We set what was out of place and watch the heater run.\n",
                        "",
                        "tasks.yaml R00",
                        "field plain"),
                yaml(
                        "tasks.yaml",
                        "    title: Adjust",
                        "    colour: red\n    title: Adjust",
                        "tasks.yaml R00",
                        "field 'colour'"),
                edit("tasks.yaml", text -> "tasks: []\n", "tasks.yaml: task 'nothing'"),
                edit("tasks.yaml", text -> "- R00\n", "tasks.yaml: entry", "fields with a name"),
                // sealants
                yaml(
                        "tasks.yaml",
                        "water-thread: water-thread-tape",
                        "water-thread: gas-thread-compound",
                        "tasks.yaml R02, joints, water-thread",
                        "'gas-thread-compound'",
                        "water-thread-tape"),
                yaml(
                        "tasks.yaml",
                        "    joints: {water-thread: water-thread-tape}\n",
                        "",
                        "tasks.yaml R02, needs",
                        "sealant 'water-thread-tape'",
                        "joint"),
                yaml(
                        "tasks.yaml",
                        "      - {role: water-thread-tape, quantity: 1, per: piece}\n",
                        "",
                        "tasks.yaml R02, needs",
                        "sealant water-thread-tape for water-thread"),
                yaml(
                        "tasks.yaml",
                        "joints: {water-thread:",
                        "joints: {air-thread:",
                        "tasks.yaml R02, joints",
                        "'air-thread'"),
                yaml(
                        "joints.yaml",
                        "use: [o-ring-lubricant]",
                        "use: [goose-fat]",
                        "joints.yaml water-ring",
                        "'goose-fat'"),
                // places
                edit(
                        "jurisdictions/larkwell.yaml",
                        text -> text.replaceFirst("(?s)tax:.*?source: invented for the demo\n", ""),
                        "jurisdictions/larkwell.yaml, tax",
                        "tax rule"),
                edit(
                        "jurisdictions/larkwell.yaml",
                        text -> text.replaceFirst("(?s)tax:.*?source: invented for the demo\n", "tax: unknown\n"),
                        "jurisdictions/larkwell.yaml, tax",
                        "leave the place out"),
                place("rate: 6}", "rate: 60}", "tax, layers 1, rate", "'60 %'"),
                place("rounding: nearest", "rounding: up", "larkwell.yaml, tax, rounding", "'up'"),
                place("roundedPer: document", "roundedPer: week", "tax, roundedPer", "'week'", "item, document"),
                place("taxable: [part, consumable]", "taxable: [part, air]", "tax, taxable", "'air'", "permit-fee"),
                edit(
                        "jurisdictions/larkwell.yaml",
                        text -> text.replaceFirst("(?s)layers:.*?taxable", "layers: []\n  taxable"),
                        "tax, layers"),
                edit(
                        "jurisdictions/larkwell.yaml",
                        text -> text.replaceFirst("(?s)layers:.*?taxable", "layers: few\n  taxable"),
                        "tax, layers",
                        "'few'"),
                place("minor-part: no", "minor-part: perhaps", "permits, minor-part", "'perhaps'", "ask"),
                place("minor-part: no", "small-part: no", "permits", "'small-part'"),
                place("'GF-\\d{5}'", "'GF-(\\d{5}'", "gasLicencePattern", "regular expression"),
                place("testTap: [T]", "testTap: [Q]", "testTap 1", "trade 'Q'"),
                place("psi: 3,", "psi: 0,", "gasTest, psi", "0.5 to 100"),
                place("capPercent: 10", "capPercent: 110", "deposit, capPercent", "0 to 100"),
                place("validityDays: 30", "validityDays: 0", "validityDays", "1 to 365"),
                place("currency: USD", "currency: CAD", "jurisdictions/larkwell.yaml, currency", "'CAD'"),
                place("id: larkwell", "id: brinefield", "jurisdictions/", "place 'brinefield'"),
                yaml(
                        "unknown-place.yaml",
                        "layers:\n    - {name: Assumed for a place without a profile, rate: 9.5}",
                        "layers: none",
                        "unknown-place.yaml, tax",
                        "not a free one"),
                // book
                yaml("scopes.yaml", "task: R06,", "task: R99,", "scopes.yaml LD05, ways clean-sensor", "task 'R99'"),
                yaml(
                        "scopes.yaml",
                        "task: R06, ",
                        "task: R06, devices: pair, ",
                        "scopes.yaml LD05",
                        "pair of task 'R06'"),
                yaml(
                        "scopes.yaml",
                        "when: [single-allowed]",
                        "when: [sunshine]",
                        "scopes.yaml LD02, ways one, when",
                        "fact 'sunshine'"),
                yaml("scopes.yaml", "devices: pair", "devices: all", "scopes.yaml LD01", "'all'", "found, pair, worst"),
                yaml("scopes.yaml", "run: buried", "run: flying", "scopes.yaml LD03", "'flying'"),
                yaml("scopes.yaml", "- cause: LD02", "- cause: LD01", "scopes.yaml LD01", "cause 'LD01'"),
                yaml(
                        "scopes.yaml",
                        "  - cause: LK06\n",
                        "  - cause: LK06\n    ways: []\n    colour: red\n",
                        "scopes.yaml LK06",
                        "'colour'"),
                edit(
                        "scopes.yaml",
                        text -> text.replaceFirst("(?s)(- cause: LK06\n.*?)advice: .*", "$1\n"),
                        "scopes.yaml LK06",
                        "way"),
                yaml(
                        "scopes.yaml",
                        "    heaterYears: 8",
                        "    heaterYears: 99",
                        "scopes.yaml, facts old-heater, heaterYears"),
                yaml(
                        "pairs.yaml",
                        "damagedBelow: 100 kilohm",
                        "damagedBelow: 2 megohm",
                        "pairs.yaml",
                        "damagedBelow",
                        "not above"),
                yaml("pairs.yaml", "dampBelow: 1 megohm", "dampBelow: 1 volt", "pairs.yaml", "dampBelow"),
                yaml("pairs.yaml", "task: R03", "task: R98", "pairs.yaml water-side-switches, task", "'R98'"),
                yaml("pairs.yaml", "id: outlet-switch", "id: outlet-tap", "pairs.yaml", "role 'outlet-tap'"),
                yaml("pairs.yaml", "sameBatch: same-batch", "sameBatch: same-colour", "pairs.yaml", "'same-colour'"),
                edit(
                        "pairs.yaml",
                        text -> text.replaceFirst("(?s)      - id: outlet-switch.*?    damaged", "    damaged"),
                        "pairs.yaml",
                        "two members"),
                yaml(
                        "warranty.yaml",
                        "partsMonths: 12",
                        "partsMonths: twelve",
                        "warranty.yaml",
                        "partsMonths",
                        "'twelve'"),
                yaml("warranty.yaml", "id: gas", "id: standard", "warranty.yaml", "'standard'"),
                // YAML itself
                yaml("rates.yaml", "creditDays: 30", "creditDays: 30\ncreditDays: 31", "rates.yaml line", "creditDays"),
                yaml("rates.yaml", "hourly:", "hourly: [", "rates.yaml line", "YAML"));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("brokenFolders")
    void aBrokenFolderIsRefusedWithPlaceValueAndWhatIsAllowed(
            String file, UnaryOperator<Map<String, String>> change, List<String> told) {
        var files = change.apply(SampleFolder.files());

        assertThat(files).as("the change to " + file + " has to do something").isNotEqualTo(SampleFolder.files());
        assertThatThrownBy(() -> ShopFiles.parse(files)).isInstanceOfSatisfying(Refusal.class, refusal -> {
            assertThat(refusal.getMessage()).contains(told).doesNotContain("\n");
            assertThat(refusal.allowed()).isNotBlank();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# nothing but a remark\n",
                "---\n",
                "null\n",
                "word\n",
                "a: 1\n---\nb: 2\n",
                "? [a, b]\n: c\n",
                "a: &x [*x]\n",
                "a: *nobody\n",
                "\ta: 1\n",
                "%YAML 9\n---\na: 1\n",
                "a: !!java.net.URL [x]\n",
                "currency: 12\n",
                "\"unclosed\n"
            })
    void oddYamlIsRefusedAndNeverBreaksTheProgram(String text) {
        for (var file : SampleFolder.files().keySet()) {
            if (file.endsWith(".yaml")) {
                var files = SampleFolder.files();
                files.put(file, text);

                assertThatThrownBy(() -> {
                            ShopFiles.parse(files);
                            TextFiles.read(files, Language.SPANISH);
                        })
                        .as(file)
                        .isInstanceOf(Refusal.class)
                        .hasMessageContaining(file);
            }
        }
    }

    @Test
    void deepNestingIsRefusedAndNeverBreaksTheProgram() {
        var files = SampleFolder.files();
        files.put("rates.yaml", "hourly: " + "[".repeat(50_000));

        assertThatThrownBy(() -> ShopFiles.parse(files)).isInstanceOf(Refusal.class);
    }

    @Test
    void aTextCutOffAnywhereIsReadOrRefused() {
        var random = new Random(11);
        for (var file : SampleFolder.files().keySet()) {
            for (int i = 0; i < 6; i++) {
                var files = SampleFolder.files();
                var cut = random.nextInt(files.get(file).length());
                files.computeIfPresent(file, (name, text) -> text.substring(0, cut));
                try {
                    ShopFiles.parse(files);
                } catch (Refusal refusal) {
                    assertThat(refusal.getMessage()).doesNotContain("\n");
                } catch (RuntimeException e) {
                    throw new AssertionError("seed 11: " + file + " cut at " + cut, e);
                }
            }
        }
    }

    @Test
    void allProblemsOfAFolderAreToldAtOnce() {
        var files = SampleFolder.files();
        files.put(
                "parts.csv",
                files.get("parts.csv").replaceFirst("1\\.62", "free").replaceFirst("2\\.05", "-1"));
        files.put("rates.yaml", files.get("rates.yaml").replace("creditDays: 30", "creditDays: thirty"));

        assertThat(ShopFiles.problems(files))
                .extracting(Refusal::where)
                .containsExactly("parts.csv row 2, cost", "parts.csv row 3, cost", "rates.yaml, creditDays");
        assertThatThrownBy(() -> ShopFiles.parse(files)).hasMessageContaining("parts.csv row 2, cost");
    }

    @Test
    void theMarkThatASpreadsheetWritesInFrontIsHarmless() {
        var files = SampleFolder.files();
        files.replaceAll((name, text) -> "\uFEFF" + text.replace("\n", "\r\n"));

        assertThat(ShopFiles.parse(files).parts()).isEqualTo(SampleFolder.shop().parts());
    }

    @Test
    void columnsMayStandInAnyOrderAndEmptyRowsArePassedOver() {
        var files = SampleFolder.files();
        files.put(
                "suppliers.csv",
                "lead_days,id,name,email,phone\n\n2,tern,Tern,a@tern.example,555-0111\n,,,,\n1,gantry,Gantry,,\n"
                        + "4,ember,Ember,,\n1,brightwell,Brightwell,,\n3,corran-plastics,Corran,,\n");

        assertThat(ShopFiles.parse(files).supplier("gantry").leadDays()).isEqualTo(1);
    }

    @Test
    void filesThatAreNotPartOfACatalogAreLeftAlone() {
        var files = SampleFolder.files();
        files.put("notes.txt", "\uFFFD");

        assertThat(ShopFiles.problems(files)).isEmpty();
    }

    @Test
    void aFolderWithoutPlacesIsRefused() {
        var files = SampleFolder.files();
        files.keySet().removeIf(name -> name.startsWith("jurisdictions/"));

        assertThatThrownBy(() -> ShopFiles.parse(files)).hasMessageContaining("file in jurisdictions/");
    }

    private static Arguments part(String from, String to, String... told) {
        return edit("parts.csv", text -> text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)), told);
    }

    private static Arguments place(String from, String to, String... told) {
        return yaml("jurisdictions/larkwell.yaml", from, to, told);
    }

    /** The first occurrence of a text is changed. */
    private static Arguments yaml(String file, String from, String to, String... told) {
        return edit(
                file,
                text -> {
                    var at = text.indexOf(from);
                    return at < 0 ? text : text.substring(0, at) + to + text.substring(at + from.length());
                },
                told);
    }

    private static Arguments edit(String file, UnaryOperator<String> change, String... told) {
        UnaryOperator<Map<String, String>> whole = files -> {
            files.computeIfPresent(file, (name, text) -> change.apply(text));
            return files;
        };
        return Arguments.of(file, whole, List.of(told));
    }

    private static Arguments without(String file, String... told) {
        UnaryOperator<Map<String, String>> whole = files -> {
            files.remove(file);
            return files;
        };
        return Arguments.of(file, whole, List.of(told));
    }
}
