package fairflame.command;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.visit.PaperHand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A customer who is away: the paper goes out, is filled in with another library, and comes back. */
class AwayJobTest {
    private static final String DAY = "2026-06-15T09:00:00-05:00";
    private static final String QUOTE = "Q-2026-0001";
    private static final String PAPER = QUOTE + "-r1-away-1.pdf";

    @TempDir
    private Path folder;

    private Shell shell;
    private byte[] paper = {};

    @BeforeEach
    void write() throws IOException {
        shell = new Shell(folder);
        shell.june("quote", shell.visit(1).toString()).done();
        shell.june("away", QUOTE).done();
        paper = Files.readAllBytes(shell.out().resolve(PAPER));
    }

    private static Map<String, String> both() {
        return PaperHand.taking("both", "one");
    }

    private Shell.Said read(String time, byte[] returned) {
        return shell.at(time, "sign", QUOTE, "--returned", file(returned).toString(), "--json");
    }

    private Path file(byte[] returned) {
        try {
            return Files.write(folder.resolve("returned.pdf"), returned);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aReturnedPaperIsSignedAndSealedWithItsDigest() throws IOException {
        var returned = PaperHand.whole(paper, PaperHand.fill(both()));
        var signed = read(DAY, returned).done().json();
        assertThat(signed.get("choice").textValue()).isEqualTo("both");
        assertThat(signed.get("dated").textValue()).isEqualTo("2026-06-12");
        assertThat(signed.get("returnedDigest").textValue()).isEqualTo(sha256(returned));
        assertThat(Files.readString(shell.out().resolve(QUOTE + "-signed.json")))
                .contains(sha256(returned), "\"dated\" : \"2026-06-12\"", "\"returned\" : \"2026-06-15\"")
                .contains("\"role\" : \"owner\"", "\"name\" : \"Marguerite Oduya\"");
        assertThat(text(Files.readAllBytes(shell.out().resolve(QUOTE + "-signed.pdf"))))
                .contains("Signed on paper dated June 12, 2026, returned June 15, 2026")
                .contains("Signed by Marguerite Oduya, owner");
        var proof = shell.at(DAY, "verify", QUOTE, "--json").done().json();
        assertThat(proof.get("intact").booleanValue()).isTrue();
        read(DAY, returned).refused("signed already");
        shell.at(DAY, "away", QUOTE).refused("signed already");
    }

    @Test
    void anAlteredPaperAnExpiredOneAndHalfAnAnswerLeaveTheQuoteOpen() {
        read(DAY, PaperHand.whole(paper, PaperHand.fill(both()), document -> document.removePage(0)))
                .refused("returned.pdf", "number of pages");
        var half = new LinkedHashMap<>(both());
        half.remove("decline-one");
        read(DAY, PaperHand.behind(paper, PaperHand.fill(half))).refused("field 'decline-one'");
        var whole = PaperHand.behind(paper, PaperHand.fill(both()));
        read("2026-08-20T09:00:00-05:00", whole).refused("expired on");
        shell.at("2026-08-20T09:00:00-05:00", "away", QUOTE).refused("expired on");
        shell.at(DAY, "sign", QUOTE, "--returned", folder.resolve("nowhere.pdf").toString())
                .refused("nowhere.pdf");
        assertThat(shell.left()).doesNotContain(QUOTE + "-signed.pdf");
        read(DAY, whole).done();
    }

    @Test
    void noneOfTheseIsKeptAndOrdersNothing() {
        var fields = new LinkedHashMap<>(both());
        fields.put("choice", "none");
        fields.remove("order-both");
        fields.put("decline-both", "tick");
        var said =
                read(DAY, PaperHand.whole(paper, PaperHand.fill(fields))).done().json();
        assertThat(said.get("choice").isNull()).isTrue();
        assertThat(said.get("kept").textValue()).startsWith(QUOTE + "-r1-returned-");
        shell.at(DAY, "invoice", QUOTE).refused("signed quote");
    }

    @Test
    void theDraftCarriesThePaperAndTheSamePaperIsWrittenAgain() throws IOException {
        assertThat(Files.readString(shell.out().resolve(QUOTE + "-r1-away-1.eml")))
                .contains("X-Unsent: 1", "filename=" + PAPER, "m.oduya@example.com");
        shell.june("away", QUOTE).done();
        shell.june("away", QUOTE, "--language", "es").done();
        assertThat(shell.left()).contains(PAPER, QUOTE + "-r1-away-2.pdf").doesNotContain(QUOTE + "-r1-away-3.pdf");
        assertThat(Files.readAllBytes(shell.out().resolve(PAPER))).isEqualTo(paper);
    }

    @Test
    void aPaperOfAnEarlierRevisionOrOfAnotherShopIsRefused() {
        var returned = PaperHand.whole(paper, PaperHand.fill(both()));
        var changed = shell.visit(1, visit -> visit.put("technician", "Somebody Else"));
        shell.at(DAY, "quote", changed.toString()).done();
        var latest = shell.at(DAY, "quote", shell.visit(1, AwayJobTest::dearer).toString(), "--json");
        latest.done();
        read(DAY, returned).refused("superseded by revision 2");
        var other = new Shell(folder.resolve("other-shop"));
        folder.resolve("other-shop").toFile().mkdirs();
        other.june("quote", other.visit(1).toString()).done();
        other.at(DAY, "sign", QUOTE, "--returned", file(returned).toString())
                .refused(PAPER, "a paper that was written here");
        other.at(DAY, "sign", "Q-2026-0009", "--returned", file(returned).toString())
                .refused("Q-2026-0009");
    }

    private static void dearer(com.fasterxml.jackson.databind.node.ObjectNode visit) {
        visit.withObject("/heater").put("description", "another gas pool heater");
    }

    @Test
    void theCommandLineSaysWhatBelongsTogether() {
        var out = folder.toString();
        assertThat(Shell.run("sign", QUOTE, "--out", out, "--returned", "a.pdf", "--choice", "both")
                        .code())
                .isEqualTo(2);
        assertThat(Shell.run("sign", QUOTE, "--out", out).code()).isEqualTo(2);
        assertThat(Shell.run("sign", QUOTE, "--out", out, "--choice", "both").code())
                .isEqualTo(2);
        shell.june("away", "Q-2026-0099").refused("Q-2026-0099");
    }

    @Test
    void theOfficeSetsForgottenDigits() {
        var set = shell.june("pin", "Ines Calloway", "--digits=9753", "--json").done();
        assertThat(set.json().get("person").textValue()).isEqualTo("Ines Calloway");
        assertThat(set.out()).doesNotContain("9753");
        shell.june("pin", "Ines Calloway", "--digits=97").refused("new digits", "4 to 12 digits");
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(byte[] pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
