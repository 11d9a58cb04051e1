package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.command.Shell.Said;
import fairflame.visit.Demo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The office's commands, each by what it promises, in the demo's shop: three paid invoices, one stopped visit. */
class OfficeCommandsTest {
    private static final String JULY = "2026-07-16T09:00:00-05:00";

    @TempDir
    private static Path folder;

    @BeforeAll
    static void theDemo() throws IOException {
        new Demo(folder.resolve("shop"), line -> {}).run();
        Files.writeString(folder.resolve("here.txt"), "a file that is there");
        Files.createDirectory(folder.resolve("copy"));
        Files.createDirectory(folder.resolve("restored"));
        Files.createDirectory(folder.resolve("other"));
        Files.writeString(folder.resolve("list.csv"), "number,cost\nSW-01,abc\n");
    }

    /** A line as typed: blanks between words, '~' for a blank inside one, '@' for the test's folder. */
    private static Said office(String line) {
        var words = new ArrayList<String>();
        Arrays.stream(line.strip().split("\\s+"))
                .map(word -> word.replace('~', ' ').replace("@", folder.toString()))
                .map(word -> word.equals("''") ? "" : word)
                .forEach(words::add);
        words.addAll(List.of("--out", folder.resolve("shop").toString(), "--at", JULY));
        return Shell.run(words.toArray(String[]::new));
    }

    private static JsonNode told(String line) {
        return office(line + " --json").done().json();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        ubl I-2026-0099                                             | I-2026-0099
        ubl 12                                                      | 12
        statement Nobody                                            | Nobody
        statement Marguerite~Oduya --from 2026-07-01 --to 2026-06-01 | last day
        refund Q-2026-0001 0.00 --method cash --reason x            | 0.00
        refund Q-2026-0001 -5.00 --method cash --reason x           | 5.00
        refund Q-2026-0001 five --method cash --reason x            | five
        refund Q-2026-0001 5.001 --method cash --reason x           | 5.001
        refund Q-2026-0001 5.00 --method cash --reason x            | 5.00
        refund Q-2026-9999 5.00 --method cash --reason x            | Q-2026-9999
        write-off I-2026-0001 5.00 --reason x                       | I-2026-0001
        write-off I-2026-9999 5.00 --reason x                       | I-2026-9999
        credit I-2026-9999 --reason x                               | I-2026-9999
        credit I-2026-0001 --reason ''                              | reason
        credit I-2026-0001 --reason x --line L99=1                  | L99
        credit I-2026-0001 --reason x --line L1=-1                  | -1
        credit I-2026-0001 --reason x --line L1=99                  | 99
        part Q-2026-9999 --done L1=1                                | Q-2026-9999
        part Q-2026-0001 --done L1=1                                | L1
        invoice Q-2026-0001                                         | not complete
        pay I-2026-9999 --amount 1.00 --method cash                 | I-2026-9999
        pay I-2026-0001 --amount 1.00 --method cash                 | 1.00
        pay I-2026-0001 --amount -1.00 --method cash                | 1.00
        compare Q-2026-9999                                         | Q-2026-9999
        compare Q-2026-0001 --actual L99=1                          | L99
        compare Q-2026-0001 --outside paint=-5.00                   | -5.00
        change Q-2026-0001 @/absent.json                            | absent.json
        change Q-2026-0001 @/here.txt                               | here.txt
        reprice Q-2026-9999                                         | Q-2026-9999
        reprice Q-2026-0001 --make                                  | signed
        verify Q-2026-9999                                          | Q-2026-9999
        sign Q-2026-9999 --choice one --name A~B                    | Q-2026-9999
        permits step Q-2026-0002 dancing                            | dancing
        permits step Q-2026-9999 applied                            | Q-2026-9999
        permits gas Q-2026-9999 --fitter A --licence GF-1 --licence-ends 2027-01-01 | Q-2026-9999
        permits book Q-2026-9999 2026-08-01 --crew A                | Q-2026-9999
        permits waive Q-2026-9999 --statement x                     | Q-2026-9999
        order --place nobody                                        | nobody
        hours add Q-2026-9999 R03 0.5                               | Q-2026-9999
        hours add Q-2026-0001 R99 0.5                               | R99
        hours add Q-2026-0001 R03 -1                                | -1
        hours decide R99 1.2 --reason x                             | R99
        hours decide R03 9 --reason x                               | 9
        hours decide R03 1.2 --reason ''                            | reason
        catalog preview @/absent.csv --supplier nobody              | nobody
        catalog preview @/list.csv --supplier nobody                | nobody
        catalog history P-NONE                                      | P-NONE
        catalog undo 7                                              | 7
        packet name '' QB                                           | laptop
        packet name truck-2 12                                      | 12
        packet attach V-NONE @/here.txt                             | V-NONE
        packet take @/absent.zip                                    | absent.zip
        packet take @/here.txt                                      | here.txt
        packet settle 9 --words x                                   | 9
        backup @/here.txt                                           | here.txt
        export @/here.txt                                           | here.txt
        """)
    void whatCannotBeIsRefusedInOneLine(String line, String named) {
        office(line).refused(named);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        pay I-2026-0001 --amount 1.00 --method cash --on soon       | --on
        permits book Q-2026-0001 tomorrow --crew A                  | DAY
        catalog undo first                                          | IMPORT
        hours add Q-2026-0001 R03 much                              | HOURS
        part Q-2026-0001 --done L1                                  | --done
        journal --from yesterday                                    | --from
        """)
    void aWordThatIsNoDayOrNumberIsAWrongLine(String line, String named) {
        var said = office(line);
        assertThat(said.code()).as(said.err()).isEqualTo(2);
        assertThat(said.err().lines()).hasSize(2).first().asString().contains(named);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        ageing                        | open                | 0.00
        statement Marguerite~Oduya    | rows                | Marguerite Oduya
        journal                       | entries             | entries
        report                        | files               | Written
        permits list                  | permits             | Q-2026-0002
        calendar                      | due                 | due.ics
        order                         | orders              | Nothing to order
        hours compare                 |                     |
        catalog imports               | imports             |
        catalog history SW-01         | prices              | cost
        packet conflicts              | conflicts           | Nothing disagrees
        verify Q-2026-0001            | intact              | as it was signed
        compare Q-2026-0001           |                     |
        ubl I-2026-0002               | file                | Written
        actual Q-2026-0001            |                     |
        """)
    void whatIsPrintedForPeopleIsAlsoOneDocumentForPrograms(String line, String field, String words) {
        var text = office(line);
        var data = office(line + " --json");
        assertThat(text.done().out()).isNotEqualTo(data.done().out());
        assertThat(data.json().isObject() || data.json().isArray()).isTrue();
        if (field != null && !field.isBlank()) {
            assertThat(data.json().has(field)).as("%s in %s", field, data.out()).isTrue();
        }
        if (words != null && !words.isBlank()) {
            assertThat(text.out()).contains(words);
        }
    }

    @Test
    void hoursAndTimesAreKeptAndTold() {
        assertThat(told("hours add Q-2026-0001 R03 0.75").get("actual").textValue())
                .isEqualTo("0.75");
        assertThat(office("hours add Q-2026-0002 R18 8.5 --standard 8.0").done().out())
                .contains("8.5 h, standard 8.0 h");
        assertThat(office("hours compare").done().out()).contains("R03");
        assertThat(told("hours decide R03 1.10 --reason slower~in~practice")
                        .get("factor")
                        .textValue())
                .isEqualTo("1.10");
        assertThat(office("hours decide R03 1.00 --reason back").done().out()).contains("R03: times x 1.00");
    }

    @Test
    void aPacketOfThisLaptopIsNamedWrittenAndTakenInWithoutHarm() {
        assertThat(told("packet name desk-1 Q").get("series").textValue()).isEqualTo("Q");
        assertThat(office("packet attach V-2026-0601 @/here.txt").done().out()).contains("is kept with V-2026-0601");
        var file = told("packet export").get("file").textValue();
        var taken = told("packet take @/shop/" + file);
        assertThat(taken.get("added").intValue()).isZero();
        assertThat(taken.get("conflicts").intValue()).isZero();
        assertThat(office("packet take @/shop/" + file).done().out()).contains("0 added");
    }

    @Test
    void whatComesInAndDisagreesIsShownSideBySideAndSettledInWords() {
        var truck = List.of("--out", at("truck"), "--at", "2026-06-03T09:00:00-05:00");
        var visit = new Shell(folder).visit(1, each -> each.put("technician", "Someone Else"));
        on(truck, "packet", "name", "truck-9", "QX");
        on(truck, "quote", visit.toString());
        var file = on(truck, "packet", "export", "--json").json().get("file").textValue();
        assertThat(told("packet take @/truck/" + file).get("conflicts").intValue())
                .isPositive();
        var conflict = told("packet conflicts").get("conflicts").get(0);
        assertThat(conflict.get("origin").textValue()).isEqualTo("truck-9");
        assertThat(office("packet conflicts").done().out()).contains("truck-9", "here ", "there ", "other content");
        var number = conflict.get("number").intValue();
        assertThat(office("packet settle " + number + " --words ours~is~right")
                        .done()
                        .out())
                .contains("Conflict " + number + " is settled: ours is right");
    }

    private static Said on(List<String> more, String... words) {
        var all = new ArrayList<>(List.of(words));
        all.addAll(more);
        return Shell.run(all.toArray(String[]::new)).done();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        capacity --gas natural --material steel-schedule-40 --size 1 --length 60ft --inlet 10inwc --drop 0.5inwc | ft
        size docs/formats/layout.example.json                                          | installed
        plan docs/formats/layout.example.json --place larkwell                         | in w.c., needs
        reconcile docs/formats/layout.example.json --static 10inwc --firing 6inwc      | in w.c.
        air-test --start 3psi --from 70f --to 60f                                      | psi
        knowledge                                                                      | 0 problems
        """)
    void commandsWithoutAShopPrintForPeopleAndForPrograms(String line, String words) {
        var all = line.split(" ");
        assertThat(Shell.run(all).done().out()).contains(words);
        var data = new ArrayList<>(List.of(all));
        data.add("--json");
        assertThat(Shell.run(data.toArray(String[]::new)).done().json().isObject())
                .isTrue();
    }

    @Test
    void theDemoTellsWhatItDoes() {
        assertThat(Shell.run("demo", "--out", at("demo")).done().out()).contains("I-2026-0003", "invented");
    }

    @Test
    void aBackupAndAnExportComeBackWhole() {
        var rows = told("export @/all.jsonl").get("rows").longValue();
        assertThat(rows).isPositive();
        assertThat(Shell.run("import", at("all.jsonl"), "--out", at("copy"), "--json")
                        .done()
                        .json()
                        .get("rows")
                        .longValue())
                .isEqualTo(rows);
        assertThat(office("backup @/copy.db").done().out()).contains("read through");
        assertThat(Shell.run("restore", at("copy.db"), "--out", at("restored"))
                        .done()
                        .out())
                .contains("Restored");
        Shell.run("restore", at("absent.db"), "--out", at("other")).refused("absent.db");
        Shell.run("import", at("absent.jsonl"), "--out", at("other")).refused("absent.jsonl");
        assertThat(Shell.run("verify", "Q-2026-0001", "--out", at("restored"))
                        .done()
                        .out())
                .contains("as it was signed");
    }

    private static String at(String name) {
        return folder.resolve(name).toString();
    }
}
