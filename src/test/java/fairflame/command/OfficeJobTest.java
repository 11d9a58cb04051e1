package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import fairflame.command.Shell.Said;
import fairflame.visit.Demo;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The office by command: from a packet to a paid invoice with permit, parts ordered and books exported. */
class OfficeJobTest {
    /** When the work is done and the right to cancel is over. */
    private static final String JULY = "2026-07-16T09:00:00-05:00";

    @TempDir
    private Path folder;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(folder);
    }

    private Said office(String... arguments) {
        return shell.at(JULY, arguments);
    }

    private JsonNode told(String... arguments) {
        var all = new ArrayList<>(List.of(arguments));
        all.add("--json");
        return office(all.toArray(String[]::new)).done().json();
    }

    /** A truck signs the gas line of the second demo visit and hands it over. */
    private void aPacketFromTheTruck() {
        var truck = folder.resolve("truck");
        var on = List.of("--out", truck.toString(), "--at", "2026-07-01T10:00:00-05:00");
        run(on, "packet", "name", "truck-2", "QB");
        run(on, "quote", shell.visit(2).toString());
        var choices = run(on, "quote", shell.visit(2).toString(), "--json").json();
        var sign = new ArrayList<>(
                List.of("sign", "QB-2026-0001", "--name", "Tobias Renner", "--authorise", "--electronic"));
        for (var choice : choices.get("choices")) {
            var id = choice.get("id").textValue();
            sign.addAll(List.of(choice.get("suggested").booleanValue() ? "--choice" : "--decline", id));
        }
        run(on, sign.toArray(String[]::new));
        var file = run(on, "packet", "export", "--json").json().get("file").textValue();
        var taken = told("packet", "take", truck.resolve(file).toString());
        assertThat(taken.get("conflicts").intValue()).isZero();
        assertThat(told("packet", "take", truck.resolve(file).toString())
                        .get("added")
                        .intValue())
                .isZero();
    }

    private static Said run(List<String> more, String... arguments) {
        var all = new ArrayList<>(List.of(arguments));
        all.addAll(more);
        return Shell.run(all.toArray(String[]::new)).done();
    }

    @Test
    void fromThePacketToThePaidInvoiceAndTheBooks() throws IOException {
        aPacketFromTheTruck();
        assertThat(told("permits", "list").at("/permits/0/state").textValue()).isEqualTo("needed");
        assertThat(told("calendar").toString()).contains("Apply for the permit of QB-2026-0001");

        office("permits", "book", "QB-2026-0001", "2026-07-03", "--crew", "Ned").refused("2026-07-03", "waiver");
        office("permits", "book", "QB-2026-0001", "2026-07-10", "--crew", "Ned Garrow")
                .done();

        var orders = told("order").get("orders");
        assertThat(orders).isNotEmpty();
        for (var order : orders) {
            var placed = told("order", "--place", order.get("supplier").textValue());
            assertThat(shell.out().resolve(placed.at("/files/0").textValue())).exists();
        }
        assertThat(told("order").get("orders")).isEmpty();

        office("permits", "step", "QB-2026-0001", "passed").refused("passed", "applied");
        office("permits", "step", "QB-2026-0001", "applied").done();
        office("permits", "step", "QB-2026-0001", "issued", "--number", "GP-26-0417")
                .done();
        office("permits", "step", "QB-2026-0001", "booked", "--day", "2026-07-17")
                .done();
        assertThat(told("calendar").toString()).contains("Inspection for QB-2026-0001, permit GP-26-0417");
        office("permits", "step", "QB-2026-0001", "passed", "--words", "A. Moss")
                .done();
        gasWorkIsRecorded();

        var invoice = invoiced();
        assertThat(invoice.get("complete").booleanValue()).isTrue();
        var total = invoice.get("total").textValue();
        office("ubl", "I-2026-0001").done();
        assertThat(Files.readString(shell.out().resolve("I-2026-0001.xml"))).contains(total);
        office("pay", "I-2026-0001", "--amount", total, "--method", "transfer").done();
        assertThat(told("ageing").get("open").textValue()).isEqualTo("0.00");
        var statement = told("statement", "Tobias Renner");
        assertThat(statement.get("closing").textValue()).isEqualTo("0.00");
        booksBalance(told("journal").get("file").textValue());
        assertThat(told("report").at("/wins/0/signed").intValue()).isEqualTo(1);
    }

    private void gasWorkIsRecorded() {
        office(
                        "permits",
                        "gas",
                        "QB-2026-0001",
                        "--fitter",
                        "Ned Garrow",
                        "--licence",
                        "GF-1",
                        "--licence-ends",
                        "2026-07-05")
                .refused("GF-1", "ended");
        var demo = Shell.demo("completion-2.json");
        var fitter = demo.at("/fitter/licence").textValue();
        var test = demo.get("pressureTest");
        office(
                        "permits",
                        "gas",
                        "QB-2026-0001",
                        "--fitter",
                        "Ned Garrow",
                        "--licence",
                        fitter,
                        "--licence-ends",
                        "2027-01-31",
                        "--psi",
                        digits(test.get("psi")),
                        "--minutes",
                        digits(test.get("minutes")),
                        "--gauge-top",
                        digits(test.get("gaugeTopPsi")),
                        "--witness",
                        "A. Moss")
                .done();
    }

    private static String digits(JsonNode value) {
        return value.asText().replaceAll("[^0-9.]", "");
    }

    /** The record of the finished work says nothing of permit, fitter and pressure test: the register does. */
    private JsonNode invoiced() {
        var record = (com.fasterxml.jackson.databind.node.ObjectNode) Shell.demo("completion-2.json");
        record.remove(List.of("permitNumber", "fitter", "pressureTest"));
        var file = shell.file("completion.json", record.toString());
        return told("invoice", "QB-2026-0001", "--completion", file.toString());
    }

    private void booksBalance(String name) throws IOException {
        var debit = BigDecimal.ZERO;
        var credit = BigDecimal.ZERO;
        for (var line :
                Files.readAllLines(shell.out().resolve(name)).stream().skip(1).toList()) {
            var cells = line.split(",");
            debit = debit.add(cells[6].isEmpty() ? BigDecimal.ZERO : new BigDecimal(cells[6]));
            credit = credit.add(cells[7].isEmpty() ? BigDecimal.ZERO : new BigDecimal(cells[7]));
        }
        assertThat(debit).isEqualByComparingTo(credit).isGreaterThan(BigDecimal.ZERO);
    }

    @Test
    void whatWasDoneIsKeptAndHoldsTheInvoiceUntilItIsSignedFor() {
        aPacketFromTheTruck();
        var lines = told("actual", "QB-2026-0001").get("lines");
        var labour = StreamSupport.stream(lines.spliterator(), false)
                .filter(line -> line.get("unit").textValue().equals("h"))
                .findFirst()
                .orElseThrow();
        var id = labour.get("id").textValue();
        assertThat(labour.get("told").booleanValue()).isFalse();
        assertThat(told(
                                "actual",
                                "QB-2026-0001",
                                "--line",
                                id + "=" + labour.get("signed").textValue())
                        .get("changeOrder"))
                .isEmpty();
        office("actual", "QB-2026-0001", "--line", id + "=60").refused(id, "-> 60", "note");
        office("actual", "QB-2026-0001", "--line", "L99=1").refused("L99", id);
        office("actual", "QB-2026-0001", "--task", "R99=1").refused("R99");
        var more = told(
                "actual",
                "QB-2026-0001",
                "--line",
                id + "=60",
                "--outside",
                "part:Second valve=31.00",
                "--note",
                "rock under the path");
        assertThat(more.get("changeOrder")).hasSize(3);
        assertThat(more.get("states")).hasSize(2);
        office("invoice", "QB-2026-0001", "--not-complete").refused("Second valve", "Line " + id, "change order");
        office("part", "QB-2026-0001", "--done", id + "=1").refused("Line " + id);
        office("actual", "QB-2026-0001", "--own-cost", id, "--outside", "Second valve=0", "--note", "borne")
                .done();
        office("invoice", "QB-2026-0001", "--not-complete").done();
    }

    @Test
    void partBillsChangesAndCreditsLandOnTheSignedCents() {
        aPacketFromTheTruck();
        var lines = told("compare", "QB-2026-0001");
        assertThat(lines.get("changeOrder")).isEmpty();
        var first = lines.at("/lines/0/id").textValue();
        var half = new BigDecimal(lines.at("/lines/0/signed").textValue()).divide(new BigDecimal("2"));
        var more = told("compare", "QB-2026-0001", "--actual", first + "=999", "--outside", "Second valve=31.00");
        assertThat(more.get("changeOrder")).hasSize(3);

        var change = shell.file("change.json", """
                {"format": "fairflame-change-1", "reason": "A second valve was asked for",
                 "added": [{"kind": "part", "item": "GV-04", "description": "Gas shutoff, 1-1/4 in", "quantity": "1",
                            "unit": "each", "unitPrice": "48.35", "why": "the first one is out of reach"}]}""");
        var draft = told("change", "QB-2026-0001", change.toString());
        office("change", "QB-2026-0001", change.toString(), "--name", "Tobias Renner")
                .refused("authorise");
        var order = told(
                "change", "QB-2026-0001", change.toString(), "--name", "Tobias Renner", "--authorise", "--electronic");
        assertThat(order.get("number").textValue()).isEqualTo("QB-2026-0001-C1");
        var agreed = new BigDecimal(draft.get("after").textValue());

        var part = new BigDecimal(told("part", "QB-2026-0001", "--done", first + "=" + half.toPlainString())
                .get("total")
                .textValue());
        var rest = new BigDecimal(
                told("invoice", "QB-2026-0001", "--not-complete").get("total").textValue());
        assertThat(part.add(rest)).isEqualByComparingTo(agreed);

        var credit = told("credit", "I-2026-0001", "--reason", "billed too early");
        assertThat(new BigDecimal(credit.get("total").textValue())).isEqualByComparingTo(part.negate());
        assertThat(shell.left()).noneMatch(file -> file.matches("C-.*-completion.*"));
        office("ubl", "C-2026-0001").done();
        office("credit", "I-2026-0001", "--reason", "again").refused("allowed");
        office("write-off", "I-2026-0002", "99999.00", "--reason", "gone").refused("write-off");
        office("write-off", "I-2026-0002", "10.00", "--reason", "settled by telephone")
                .done();
        var owed = rest.subtract(new BigDecimal("10.00"));
        office("pay", "I-2026-0002", "--amount", rest.toPlainString(), "--method", "card")
                .refused("payment");
        office("pay", "I-2026-0002", "--amount", owed.toPlainString(), "--method", "card")
                .done();
        assertThat(told("ageing").get("open").textValue()).isEqualTo("0.00");
        office("refund", "QB-2026-0001", "1.00", "--method", "card", "--reason", "x")
                .refused("refund");
    }

    @Test
    void aPriceListIsLookedAtTakenOverUsedAndTakenBack() {
        var list = shell.file("spring.csv", "Item,Dealer price\nSW-01,36.50\nSW-03,36.50\n");
        office("catalog", "preview", list.toString(), "--supplier", "tern").refused("column mapping of tern");
        var map = List.of("--map", "number=Item", "--map", "cost=Dealer price");
        var preview = told(
                "catalog",
                "preview",
                list.toString(),
                "--supplier",
                "tern",
                map.get(0),
                map.get(1),
                map.get(2),
                map.get(3));
        assertThat(preview.get("changed")).hasSize(2);
        assertThat(preview.get("vanished")).isNotEmpty();
        assertThat(total(told("quote", shell.visit(1).toString()))).isEqualTo("389.86");

        told("catalog", "take", list.toString(), "--supplier", "tern");
        assertThat(told("catalog", "history", "SW-01").toString()).contains("32.00", "36.50");
        var changed = told("reprice", "Q-2026-0001");
        assertThat(changed.toString()).contains("\"then\":\"389.86\"", "SW-01");
        assertThat(changed.get("newRevision").intValue()).isZero();
        assertThat(told("reprice", "Q-2026-0001", "--make").get("newRevision").intValue())
                .isEqualTo(2);
        assertThat(told("reprice", "Q-2026-0001").get("choices")).isEmpty();
        assertThat(total(told("quote", shell.visit(1).toString()))).isNotEqualTo("389.86");
        told("catalog", "undo", "1");
        assertThat(total(told("quote", shell.visit(1).toString()))).isEqualTo("389.86");
        var bad = shell.file("bad.csv", "Item,Dealer price\nSW-01,cheap\n");
        office("catalog", "take", bad.toString(), "--supplier", "tern").refused("bad.csv row 2", "cheap");
    }

    private static String total(JsonNode quote) {
        return StreamSupport.stream(quote.get("choices").spliterator(), false)
                .filter(choice -> choice.get("suggested").booleanValue())
                .map(choice -> choice.get("total").textValue())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everythingIsExportedAndTakenInAgainAndABackupRestored() throws IOException {
        new Demo(shell.out(), line -> {}).run();
        var first = folder.resolve("all.jsonl");
        office("export", first.toString()).done();
        var fresh = Files.createDirectory(folder.resolve("fresh"));
        Shell.run("import", first.toString(), "--out", fresh.toString()).done();
        var second = folder.resolve("again.jsonl");
        Shell.run("export", second.toString(), "--out", fresh.toString(), "--at", JULY)
                .done();
        assertThat(Files.readString(second)).isEqualTo(Files.readString(first));
        Shell.run("verify", "Q-2026-0001", "--out", fresh.toString()).done();
        Shell.run("import", first.toString(), "--out", fresh.toString()).refused("fairflame.db");

        var text = Files.readString(first);
        exportRefused(text.substring(0, text.length() * 2 / 3), "line");
        exportRefused(text.replaceFirst("Marguerite", "Margarete"), "altered");
        exportRefused(text.replaceFirst("fairflame data", "other data"), "format");
        exportRefused(text.replaceFirst("\"table\":\"visit\"", "\"table\":\"song\""), "song");

        office("backup", folder.resolve("copy.db").toString()).done();
        var restored = Files.createDirectory(folder.resolve("restored"));
        Shell.run("restore", folder.resolve("copy.db").toString(), "--out", restored.toString())
                .done();
        Shell.run("verify", "Q-2026-0001", "--out", restored.toString()).done();
    }

    private void exportRefused(String text, String word) throws IOException {
        var file = Files.writeString(folder.resolve("altered.jsonl"), text);
        var target = Files.createDirectories(folder.resolve("target"));
        Shell.run("import", file.toString(), "--out", target.toString()).refused("altered.jsonl", word);
        try (var left = Files.list(target)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void hoursAreComparedAndAStandardTimeChangesOnlyByAPerson() {
        aPacketFromTheTruck();
        var tasks = told("report").at("/revenue");
        assertThat(tasks).isEmpty();
        office("hours", "add", "QB-2026-0001", "R99", "1.0").refused("R99");
        office("hours", "decide", "R03", "9", "--reason", "x").refused("0.25 to 4");
        var before = total(told("quote", shell.visit(1).toString()));
        office("hours", "decide", "R03", "2", "--reason", "every job took twice the time")
                .done();
        assertThat(total(told("quote", shell.visit(1).toString()))).isNotEqualTo(before);
    }
}
