package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contract for scripts, on the four demo visits. */
class WholeJobTest {
    @TempDir
    private Path folder;

    private Shell shell;

    @BeforeEach
    void open() {
        shell = new Shell(folder);
    }

    @Test
    void twoWetSwitchesAreFoundQuotedSignedInvoicedAndPaid() {
        var found = Shell.run("diagnose", shell.visit(1).toString(), "--json")
                .done()
                .json();
        assertThat(found.get("outcome").textValue()).isEqualTo("settled");
        assertThat(found.at("/findings/0/cause").textValue()).isEqualTo("LD01");
        assertThat(found.at("/findings/0/supports")).isNotEmpty();
        assertThat(found.get("repairs").toString()).contains("R03");
        assertThat(found.get("nextCheck").isNull()).isTrue();

        var quote =
                shell.june("quote", shell.visit(1).toString(), "--json").done().json();
        assertThat(choice(quote, "both").get("total").textValue()).isEqualTo("389.86");
        assertThat(choice(quote, "one").get("total").textValue()).isEqualTo("293.80");
        assertThat(choice(quote, "both").get("suggested").booleanValue()).isTrue();
        assertThat(choice(quote, "both").get("arithmetic").toString()).contains("0.316");
        sumsAreRight(quote);

        shell.june(
                        "sign",
                        "Q-2026-0001",
                        "--choice",
                        "both",
                        "--name",
                        "Marguerite Oduya",
                        "--authorise",
                        "--electronic",
                        "--decline",
                        "one",
                        "--json")
                .done();
        var deposit = shell.june("pay", "Q-2026-0001", "--amount", "38.98", "--method", "card", "--json")
                .done()
                .json();
        assertThat(deposit.get("left").textValue()).isEqualTo("350.88");
        assertThat(deposit.get("files").toString()).isEqualTo("[\"P-Q-2026-0001-1.pdf\"]");
        assertThat(paper("P-Q-2026-0001-1.pdf")).contains("We received $38.98.").contains("deposit $350.88");
        shell.june("invoice", "Q-2026-0001").refused("right to cancel", "2026-06-13", "waiver");
        var invoice = shell.later(
                        "invoice",
                        "Q-2026-0001",
                        "--completion",
                        shell.completion(1).toString(),
                        "--json")
                .done()
                .json();
        assertThat(invoice.get("total").textValue()).isEqualTo("389.86");
        assertThat(invoice.get("balance").textValue()).isEqualTo("350.88");
        assertThat(invoice.get("complete").booleanValue()).isTrue();
        var paid = shell.later("pay", "I-2026-0001", "--amount", "350.88", "--method", "card", "--json")
                .done()
                .json();
        assertThat(paid.get("balance").textValue()).isEqualTo("0.00");
        assertThat(paid.get("files").toString()).contains("I-2026-0001.pdf").endsWith("\"P-I-2026-0001-2.pdf\"]");
        assertThat(paper("P-I-2026-0001-2.pdf"))
                .contains("We received $350.88.")
                .contains("payment $0.00");
        var proof = shell.june("verify", "Q-2026-0001", "--json").done().json();
        assertThat(proof.get("intact").booleanValue()).isTrue();
    }

    private String paper(String name) {
        try (var document = Loader.loadPDF(shell.out().resolve(name).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aGasLineThatIsTooSmallIsSizedAndCarriesItsNotes() {
        var quote =
                shell.june("quote", shell.visit(2).toString(), "--json").done().json();
        var notes = quote.get("notes").toString() + choice(quote, "larger-line").get("notes");
        assertThat(notes).contains("N-GASFIT", "N-PERMIT", "N-TEST", "N-UTIL", "N-CO", "N-LOCAL", "N-HIDDEN");
        var lines = choice(quote, "larger-line").get("lines").toString();
        assertThat(lines)
                .contains("1-1/4 in, by the foot", "Sediment trap", "Gas shutoff", "compound", "permit-fee", "120.00");
        sumsAreRight(quote);
        assertThat(quote.get("choices"))
                .as("ways to make the line enough, each with its price and its pressures")
                .hasSizeGreaterThanOrEqualTo(2);
        for (var way : quote.get("choices")) {
            assertThat(way.toString()).contains("in w.c.");
        }
    }

    @Test
    void gasWorkIsNotBilledAsCompleteWithoutPermitFitterAndTestRecord() {
        shell.june("quote", shell.visit(2).toString()).done();
        shell.june(
                        "sign",
                        "Q-2026-0001",
                        "--choice",
                        "larger-line",
                        "--name",
                        "T. Renner",
                        "--authorise",
                        "--electronic",
                        "--decline",
                        "own-line")
                .done();
        shell.later("invoice", "Q-2026-0001").refused("permit number", "licence number", "pressure test");
        assertThat(shell.left()).doesNotContain("I-2026-0001.pdf");
        var invoice = shell.later(
                        "invoice",
                        "Q-2026-0001",
                        "--completion",
                        shell.completion(2).toString(),
                        "--json")
                .done()
                .json();
        // The refused attempt took no number.
        assertThat(invoice.get("number").textValue()).isEqualTo("I-2026-0001");
    }

    @Test
    void contradictoryReadingsGetADiagnosisOnlyQuoteAndTheNextCheck() {
        var found = Shell.run("diagnose", shell.visit(3).toString(), "--json")
                .done()
                .json();
        assertThat(found.get("outcome").textValue()).isEqualTo("not-settled");
        assertThat(found.at("/nextCheck/check").textValue()).isEqualTo("leak-high-limit");
        assertThat(found.at("/nextCheck/reason").textValue()).isNotBlank();

        var quote =
                shell.june("quote", shell.visit(3).toString(), "--json").done().json();
        assertThat(quote.get("kind").textValue()).isEqualTo("diagnosis-only");
        assertThat(quote.at("/choices/0/lines"))
                .allSatisfy(line -> assertThat(line.get("kind").textValue()).isIn("diagnosis", "trip"));
    }

    @Test
    void aSmellOfGasStopsWithCodeThreeAndWithoutAnyAmount() {
        var found = Shell.run("diagnose", shell.visit(4).toString(), "--json");
        assertThat(found.code()).isEqualTo(3);
        assertThat(found.json().get("outcome").textValue()).isEqualTo("stop-work");
        assertThat(found.json().get("repairs")).isEmpty();

        var quote = shell.june("quote", shell.visit(4).toString(), "--json");
        assertThat(quote.code()).isEqualTo(3);
        assertThat(quote.json().get("choices")).isEmpty();
        assertThat(quote.out()).doesNotContainPattern("\\d+\\.\\d{2}\\b").doesNotContain("R12", "R17");
        assertThat(shell.left()).contains("V-2026-0604-stop-work.pdf").noneMatch(name -> name.startsWith("Q-"));
    }

    @Test
    void everyLineAnswersWhy() {
        var quote =
                shell.june("quote", shell.visit(1).toString(), "--json").done().json();
        for (var line : choice(quote, "both").get("lines")) {
            var id = line.get("id").textValue();
            var why =
                    shell.june("quote", shell.visit(1).toString(), "--why", id).done();
            assertThat(why.out().lines()).as(id).hasSizeGreaterThanOrEqualTo(2);
            assertThat(line.get("basis")).as(id).isNotEmpty();
        }
        assertThat(shell.june("quote", shell.visit(1).toString(), "--why", "tax")
                        .done()
                        .out())
                .contains("7.25");
        shell.june("quote", shell.visit(1).toString(), "--why", "L99").refused("L99");
    }

    @Test
    void askingAgainGivesTheSameQuoteAndAChangedVisitANewRevision() {
        shell.june("quote", shell.visit(1).toString()).done();
        var again =
                shell.june("quote", shell.visit(1).toString(), "--json").done().json();
        assertThat(again.get("number").textValue()).isEqualTo("Q-2026-0001");
        assertThat(again.get("revision").intValue()).isEqualTo(1);
        var changed = shell.june(
                        "quote",
                        shell.visit(1, visit -> visit.putObject("price").put("zone", "outer"))
                                .toString(),
                        "--json")
                .done()
                .json();
        assertThat(changed.get("revision").intValue()).isEqualTo(2);
        assertThat(choice(changed, "both").get("lines").toString()).contains("119.00");
    }

    @Test
    void aPlaceThatNobodyKnowsGetsTheMostCautiousRulesAndSaysSo() {
        var quote = shell.june(
                        "quote",
                        shell.visit(2, visit -> {
                                    visit.put("jurisdiction", "nowhere-yet");
                                    visit.putObject("price").put("taxRate", "8.5");
                                })
                                .toString(),
                        "--json")
                .done()
                .json();
        assertThat(quote.get("assumed")).isNotEmpty();
        assertThat(quote.get("assumed").toString()).containsIgnoringCase("not checked");
        assertThat(quote.get("notes").toString() + quote.at("/choices/0/notes"))
                .contains("N-GASFIT", "N-PERMIT", "N-CANCEL");
    }

    private static JsonNode choice(JsonNode quote, String id) {
        for (var choice : quote.get("choices")) {
            if (choice.get("id").textValue().equals(id)) {
                return choice;
            }
        }
        throw new AssertionError("no choice " + id + " in " + quote.get("choices"));
    }

    /** EN 16931, BR-CO-10, BR-CO-13 and BR-CO-15, on the printed cents. */
    private static void sumsAreRight(JsonNode quote) {
        for (var choice : quote.get("choices")) {
            var sum = BigDecimal.ZERO;
            for (var line : choice.get("lines")) {
                sum = sum.add(new BigDecimal(line.get("net").textValue()));
            }
            assertThat(sum).isEqualByComparingTo(choice.get("subtotal").textValue());
            assertThat(sum.subtract(new BigDecimal(choice.get("discount").textValue()))
                            .add(new BigDecimal(choice.get("tax").textValue())))
                    .isEqualByComparingTo(choice.get("total").textValue());
        }
    }
}
