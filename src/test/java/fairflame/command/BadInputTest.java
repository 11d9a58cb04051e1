package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.store.Folder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person can get wrong: refused in one line that names file, field, value and what is allowed. */
class BadInputTest {
    @TempDir
    private Path folder;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(folder);
    }

    @Test
    void aMissingFileIsNamed() {
        Shell.run("diagnose", folder.resolve("absent.json").toString()).refused("absent.json");
    }

    @Test
    void anEmptyFileIsNamed() {
        Shell.run("diagnose", shell.file("empty.json", "").toString()).refused("empty.json");
    }

    @Test
    void malformedJsonIsNamedWithItsLine() {
        var file = shell.file("broken.json", "{\n  \"format\": \"fairflame-visit-1\",\n  \"id\" \"x\"\n}");
        Shell.run("diagnose", file.toString()).refused("broken.json", "line 3");
    }

    @Test
    void aFileThatIsNotTextIsNamed() throws IOException {
        var file = Files.write(folder.resolve("picture.json"), new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1, 2});
        Shell.run("diagnose", file.toString()).refused("picture.json");
    }

    @Test
    void anUnknownFieldIsNamed() {
        var file = shell.visit(1, visit -> visit.put("gass", "yes"));
        Shell.run("diagnose", file.toString()).refused("visit-1.json", "gass");
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource({"length, -48ft", "length, 48", "size, 7/8", "material, wood"})
    void aGasLineThatCannotBeIsRefusedWithFileAndField(String field, String value) {
        var file = shell.visit(2, visit -> ((ObjectNode) visit.at("/layout/segments/1")).put(field, value));
        var before = shell.left();
        shell.june("quote", file.toString()).refused("visit-2.json", "layout", value.replace("-48ft", "-48"));
        assertThat(shell.left()).isEqualTo(before);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource({
        "gas-static, 10.1 furlong, furlong",
        "gas-static, -3 inwc, -3",
        "gas-static, 4000 inwc, 4000",
        "gas-static, 10.1, unit",
        "gas-static, ten, ten",
        "valve-low, 900 v, 900",
        "flame-signal, 99 ua, 99",
        "leak-outlet, -1 ohm, -1",
        "bypass-pair, maybe, maybe"
    })
    void aReadingOutsideWhatIsPossibleIsRefused(String check, String value, String named) {
        var file = shell.visit(1, visit -> {
            for (var reading : visit.get("readings")) {
                if (reading.get("check").textValue().equals(check)) {
                    ((ObjectNode) reading).put("value", value);
                }
            }
        });
        shell.june("quote", file.toString()).refused("visit-1.json", "readings[", named);
        assertThat(shell.left()).doesNotContain("Q-2026-0001.pdf");
    }

    @ParameterizedTest(name = "plate {0} = {1}")
    @CsvSource({
        "input, 400000 parsec, parsec",
        "input, -1 btu/h, -1",
        "inletMinimum, 0 inwc, 0",
        "inletMaximum, 900 inwc, 900",
        "efficiency, 400 %, 400",
        "flameMinimum, 5 v, v"
    })
    void aPlateOutsideWhatIsPossibleIsRefused(String field, String value, String named) {
        var file = shell.visit(1, visit -> ((ObjectNode) visit.get("heater")).put(field, value));
        Shell.run("diagnose", file.toString()).refused("visit-1.json", "heater." + field, named);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "--length, 60, unit",
        "--length, 60yd, yd",
        "--length, -60ft, -60",
        "--length, 0ft, length",
        "--inlet, 7bananas, bananas",
        "--drop, 9inwc, drop",
        "--drop, 0inwc, drop",
        "--size, 9, 9",
        "--size, x, x",
        "--material, lead, lead",
        "--gas, hydrogen, hydrogen",
        "--length, 1e400ft, e400ft",
        "--length, 999999999999ft, length"
    })
    void aCapacityThatMakesNoSenseIsRefused(String option, String value, String named) {
        var arguments = new String[] {
            "capacity",
            "--gas",
            "natural",
            "--material",
            "steel-schedule-40",
            "--size",
            "1-1/4",
            "--length",
            "60ft",
            "--inlet",
            "7inwc",
            "--drop",
            "0.5inwc"
        };
        for (int i = 1; i < arguments.length; i++) {
            if (arguments[i - 1].equals(option)) {
                arguments[i] = value;
            }
        }
        Shell.run(arguments).refused(named);
    }

    @Test
    void aWrongCommandLineEndsWithTwo() {
        assertThat(Shell.run("quote").code()).isEqualTo(2);
        assertThat(Shell.run("fly").code()).isEqualTo(2);
        assertThat(Shell.run("capacity", "--gas").code()).isEqualTo(2);
        assertThat(Shell.run("fly").err()).doesNotContain("Exception");
    }

    @Test
    void anUnknownPartIsNamedByItsRole() {
        var catalog = catalog("parts.csv", text -> text.replace(",high-limit-switch,", ",high-limit-swich,"));
        shell.june("quote", shell.visit(1).toString(), "--catalog", catalog.toString())
                .refused("high-limit-switch");
        assertThat(shell.left()).isEmpty();
    }

    @Test
    void aTaskWithoutStandardTimeIsNamed() {
        var catalog = catalog(
                "tasks.yaml", text -> text.replaceFirst("(?s)(- id: R06\\n.*?)times: \\[[^\\]]*\\]", "$1times: []"));
        shell.june("quote", shell.visit(1).toString(), "--catalog", catalog.toString())
                .refused("tasks.yaml", "R06", "time");
    }

    @Test
    void aPlaceWithoutTaxRuleIsNamed() {
        var catalog =
                catalog("jurisdictions/larkwell.yaml", text -> text.replaceFirst("(?s)tax:\\n.*?deposit:", "deposit:"));
        shell.june("quote", shell.visit(1).toString(), "--catalog", catalog.toString())
                .refused("larkwell.yaml", "tax");
    }

    @Test
    void anUnknownPlaceNeverGuessesThatNothingIsTaxed() {
        var file = shell.visit(1, visit -> visit.put("jurisdiction", "nowhere-yet"));
        var quote = shell.june("quote", file.toString(), "--json").done().json();
        assertThat(quote.at("/choices/0/tax").textValue()).isNotEqualTo("0.00");
        assertThat(quote.get("assumed").toString()).contains("nowhere-yet", "sales tax");
    }

    @Test
    void anotherCurrencyIsNamed() {
        var file = shell.visit(
                1,
                visit -> visit.putObject("price")
                        .put("discountAmount", "EUR 20.00")
                        .put("discountReason", "club"));
        shell.june("quote", file.toString()).refused("price.discountAmount", "EUR", "USD");
        var catalog = catalog("jurisdictions/larkwell.yaml", text -> text.replace("currency: USD", "currency: EUR"));
        shell.june("quote", shell.visit(1).toString(), "--catalog", catalog.toString())
                .refused("larkwell.yaml", "EUR", "USD");
    }

    @Test
    void aFolderThatIsAFileIsNamed() {
        var file = shell.file("occupied", "text");
        Shell.run("quote", shell.visit(1).toString(), "--out", file.toString()).refused("occupied", "folder");
        assertThat(file).hasContent("text");
    }

    @Test
    void aDatabaseThatIsNoneIsNamed() throws IOException {
        Files.createDirectories(shell.out());
        Files.writeString(shell.out().resolve("fairflame.db"), "this is not a database at all, only text in the way");
        shell.june("quote", shell.visit(1).toString()).refused("fairflame.db");
        assertThat(shell.left()).doesNotContain("Q-2026-0001.pdf");
    }

    @Test
    void aLockedDatabaseIsNamed() throws SQLException {
        shell.june("quote", shell.visit(3).toString()).done();
        var file = shell.out().resolve("fairflame.db");
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement()) {
            statement.execute("begin exclusive");
            shell.june("quote", shell.visit(1).toString()).refused("fairflame.db");
            statement.execute("rollback");
        }
        assertThat(shell.left()).noneMatch(name -> name.startsWith("Q-2026-0002"));
        shell.june("quote", shell.visit(1).toString()).done();
    }

    @Test
    void anExpiredQuoteCannotBeSigned() {
        shell.june("quote", shell.visit(1).toString()).done();
        shell.at(
                        "2026-07-11T10:00:00-05:00",
                        "sign",
                        "Q-2026-0001",
                        "--choice",
                        "one",
                        "--name",
                        "M. Oduya",
                        "--authorise",
                        "--electronic",
                        "--decline",
                        "both")
                .refused("Q-2026-0001", "expired", "2026-07-10");
    }

    @Test
    void nothingIsTickedBefore() {
        shell.june("quote", shell.visit(1).toString()).done();
        shell.june("sign", "Q-2026-0001", "--choice", "one", "--name", "M. Oduya", "--decline", "both")
                .refused("authorise");
        shell.june("sign", "Q-2026-0001", "--choice", "one", "--name", "M. Oduya", "--authorise", "--electronic")
                .refused("both");
        shell.june(
                        "sign",
                        "Q-2026-0001",
                        "--choice",
                        "one",
                        "--name",
                        " ",
                        "--authorise",
                        "--electronic",
                        "--decline",
                        "both")
                .refused("name");
        shell.june("sign", "Q-2026-0009", "--choice", "one", "--name", "M. Oduya")
                .refused("Q-2026-0009");
        shell.june("verify", "Q-2026-0001").refused("Q-2026-0001");
    }

    @Test
    void anUnsignedQuoteCannotBeInvoiced() {
        shell.june("quote", shell.visit(1).toString()).done();
        shell.june("invoice", "Q-2026-0001").refused("Q-2026-0001", "signed");
    }

    @Test
    void moreThanIsDueCannotBePaid() {
        shell.june("quote", shell.visit(3).toString()).done();
        shell.june("sign", "Q-2026-0001", "--choice", "diagnosis", "--name", "P. Strand", "--authorise", "--electronic")
                .done();
        shell.june("invoice", "Q-2026-0001", "--not-complete").done();
        shell.june("pay", "I-2026-0001", "--amount", "209.01", "--method", "cash")
                .refused("209.01", "209.00");
        shell.june("pay", "I-2026-0001", "--amount", "-5.00", "--method", "cash")
                .refused("5.00");
        shell.june("pay", "I-2026-0001", "--amount", "1.005", "--method", "cash")
                .refused("1.005");
        shell.june("pay", "I-2026-0009", "--amount", "1.00", "--method", "cash").refused("I-2026-0009");
        var paid = shell.june("pay", "I-2026-0001", "--amount", "209.00", "--method", "cash", "--json")
                .done()
                .json();
        assertThat(paid.get("balance").textValue()).isEqualTo("0.00");
    }

    @Test
    void aBypassLeadThatIsStillPlacedKeepsTheFindingOpen() {
        var file =
                shell.visit(1, visit -> ((ObjectNode) visit.get("bypassLeads").get(0)).put("removed", false));
        var found = Shell.run("diagnose", file.toString(), "--json").done().json();
        assertThat(found.get("outcome").textValue()).isEqualTo("not-settled");
        assertThat(found.get("bypassLeadsStillPlaced").intValue()).isEqualTo(1);
    }

    private Path catalog(String name, UnaryOperator<String> change) {
        var target = folder.resolve("catalog");
        Folder.shipped("catalog-sample").forEach((file, text) -> {
            try {
                var path = target.resolve(file);
                Files.createDirectories(path.getParent());
                var changed = file.equals(name) ? change.apply(text) : text;
                if (file.equals(name)) {
                    assertThat(changed).as("the change of %s", name).isNotEqualTo(text);
                }
                Files.writeString(path, changed);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        return target;
    }
}
