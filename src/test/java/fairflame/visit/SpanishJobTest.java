package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.wording.Language;
import fairflame.wording.Told;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The four demo visits of customers who read Spanish, from readings to the paid invoice. */
class SpanishJobTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Names of people, streets and the shop, and a unit: the same in every language. */
    private static final List<String> NAMES =
            List.of("Sandpiper Pool Heat", "Quay Street", "Heron Walk", "Corran County 04417", "in w.c.", "Gull");

    @TempDir
    static Path folder;

    @Test
    void anotherDemoInTheSameFolderIsRefusedAndTouchesNothing() throws IOException {
        var paper = folder.resolve("Q-2026-0001.pdf");
        var before = Files.readAllBytes(paper);
        assertThatThrownBy(() -> new Demo(folder, line -> {}).run())
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining(folder.toString())
                .hasMessageContaining("--out");
        assertThat(paper).hasBinaryContent(before);
    }

    @BeforeAll
    static void run() {
        new Demo(folder, Language.SPANISH, line -> {}).run();
    }

    @Test
    void everyQuoteCostsTheSameToTheCentAsInEnglish() {
        try (var workplace = open()) {
            for (var number : List.of("Q-2026-0001", "Q-2026-0002", "Q-2026-0003")) {
                var quote = new Agreeing(workplace).quote(number);
                var visit = workplace
                        .store()
                        .reading(records -> records.visits().find(quote.visit()).orElseThrow());
                var english =
                        CustomerLanguage.of(Pad.LIBRARY.visits().read(visit.text()), Language.ENGLISH, Pad.LIBRARY);
                var twin = new QuoteMaking(Pad.LIBRARY)
                        .quote(Examination.of(english, Pad.LIBRARY), number, quote.revision(), quote.made());
                assertThat(twin.language()).isEqualTo("en");
                assertThat(EnglishWords.in(Told.texts(twin))).hasSizeGreaterThan(15);
                assertThat(amounts(quote)).isEqualTo(amounts(twin)).hasSizeGreaterThan(10);
            }
        }
    }

    @Test
    void everyInvoiceIsThatOfTheSignedQuoteAndPaid() {
        try (var workplace = open()) {
            for (var number : List.of("1", "2", "3")) {
                var invoice = new Billing(workplace).shown("I-2026-000" + number);
                var signed = workplace
                        .store()
                        .reading(records -> records.agreements().latest("Q-2026-000" + number))
                        .orElseThrow();
                assertThat(invoice.invoice().totals()).isEqualTo(signed.taken().totals());
                assertThat(invoice.invoice().title()).isEqualTo(signed.taken().title());
                assertThat(invoice.balance().isZero()).isTrue();
            }
        }
    }

    /** Every value that is an amount of money, by its place. */
    private static TreeMap<String, String> amounts(Record record) {
        try {
            var found = new TreeMap<String, String>();
            walk("", JSON.readTree(CanonicalForm.write(record)), found);
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void walk(String at, JsonNode node, TreeMap<String, String> found) {
        if (node.isTextual() && node.asText().matches("USD -?\\d+\\.\\d\\d")) {
            found.put(at, node.asText());
        }
        node.properties().forEach(field -> walk(at + "/" + field.getKey(), field.getValue(), found));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            walk(at + "/" + i, node.get(i), found);
        }
    }

    @Test
    void noPaperHasAnEnglishSentenceLeft() throws IOException {
        assertThat(names()).hasSizeGreaterThan(10);
        for (var name : names()) {
            assertThat(EnglishWords.in(sentences(folder.resolve(name))))
                    .as(name)
                    .isEmpty();
        }
    }

    @Test
    void noTextOfTheShopsFilesStandsOnASpanishPaperInEnglish() throws IOException {
        var spoken = new ArrayList<String>(Told.texts(Pad.LIBRARY.shop()));
        spoken.addAll(Told.texts(Pad.LIBRARY.notes()));
        spoken.addAll(Told.texts(Pad.LIBRARY.cautions()));
        Pad.LIBRARY.knowledge().causes().forEach(cause -> spoken.addAll(List.of(cause.title(), cause.plain())));
        for (var name : names()) {
            var text = String.join(" ", sentences(folder.resolve(name)));
            assertThat(spoken.stream()
                            .filter(each -> each.split(" ", -1).length > 2)
                            .filter(text::contains))
                    .as(name)
                    .isEmpty();
        }
    }

    private static List<String> sentences(Path pdf) throws IOException {
        try (var document = Loader.loadPDF(pdf.toFile())) {
            var text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (var name : NAMES) {
                text = text.replace(name, "");
            }
            return Arrays.asList(text.split("(?<=[.:;?!])\\s|\u2022"));
        }
    }

    @Test
    void theQuoteIsSealedInTheLanguageOfItsConsentAndProvesItself() {
        try (var workplace = open()) {
            var signed = workplace
                    .store()
                    .reading(records -> records.agreements().latest("Q-2026-0001"))
                    .orElseThrow();
            assertThat(signed.quote().language()).isEqualTo("es");
            assertThat(signed.signature().consent())
                    .startsWith("He leído este presupuesto y autorizo")
                    .contains("prometen lo mismo que en inglés");
            assertThat(signed.declined().get(0).acknowledgement()).startsWith("Me ofrecieron");
            for (var number : List.of("Q-2026-0001", "Q-2026-0002", "Q-2026-0003")) {
                assertThat(new Proof(workplace).of(number).holds()).as(number).isTrue();
            }
        }
    }

    @Test
    void theStatementOfACustomerIsInTheLanguageOfTheQuote() throws IOException {
        try (var workplace = open()) {
            var span = new fairflame.invoice.account.Statement.Span(
                    java.time.LocalDate.of(2026, 1, 1), java.time.LocalDate.of(2026, 12, 31));
            var files =
                    new Ledger(workplace).statement("Marguerite Oduya", span).files();
            var sentences = sentences(folder.resolve(files.get(0)));
            assertThat(EnglishWords.in(sentences)).isEmpty();
            assertThat(String.join(" ", sentences)).contains("Estado de cuenta", "Pago, tarjeta", "Factura, Los dos");
        }
    }

    @Test
    void aVisitInAnotherLanguageIsStoredWithIt() {
        try (var workplace = open()) {
            var stored = workplace
                    .store()
                    .reading(records -> records.visits().find("V-2026-0601"))
                    .orElseThrow();
            assertThat(Pad.LIBRARY.visits().read(stored.text()).language()).isEqualTo(Language.SPANISH);
        }
    }

    private static Workplace open() {
        var clock = Clock.fixed(Instant.parse("2026-12-31T12:00:00Z"), ZoneOffset.UTC);
        return Workplace.open(folder, Pad.LIBRARY, clock, "R. Okonma");
    }

    private static List<String> names() throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".pdf"))
                    .sorted()
                    .toList();
        }
    }
}
