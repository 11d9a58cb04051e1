package fairflame.document.returned;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.document.AwayPaper;
import fairflame.visit.PaperHand;
import fairflame.visit.PaperHand.Act;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionJavaScript;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationFreeText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationInk;
import org.apache.pdfbox.pdmodel.interactive.form.PDTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a paper that came back may not have been changed in. Filled in and altered with another library. */
class ReturnedPaperTest {
    private static final byte[] PAPER = AwayPaper.english();

    private static Map<String, String> both() {
        return PaperHand.taking("both", "one");
    }

    private static byte[] whole(Act... acts) {
        return PaperHand.whole(PaperHand.whole(PAPER, PaperHand.fill(both())), acts);
    }

    private static byte[] behind(Act... acts) {
        return PaperHand.behind(PaperHand.behind(PAPER, PaperHand.fill(both())), acts);
    }

    private static void prove(byte[] returned) {
        ReturnedPaper.open(returned).proveAgainst(PAPER);
    }

    @Test
    void aPaperThatWasOnlyFilledInIsAsItWasWritten() {
        for (var returned : List.of(PAPER, whole(), behind())) {
            assertThatCode(() -> prove(returned)).doesNotThrowAnyException();
        }
        assertThat(Arrays.copyOf(behind(), PAPER.length)).isEqualTo(PAPER);
    }

    @Test
    void theAnswersAreReadAsFilledIn() {
        for (var returned : List.of(whole(), behind())) {
            var answers = ReturnedPaper.open(returned).answers();
            assertThat(answers.text("choice")).isEqualTo("take-both");
            assertThat(answers.text("name")).isEqualTo("Marguerite Oduya");
            assertThat(answers.text("role")).isEqualTo("owner");
            assertThat(answers.ticked("order-both")).isTrue();
            assertThat(answers.ticked("decline-both")).isFalse();
        }
        var empty = ReturnedPaper.open(PAPER).answers();
        assertThat(empty.values().entrySet())
                .allSatisfy(entry -> assertThat(entry.getValue().isEmpty())
                        .as(entry.getKey())
                        .isEqualTo(!entry.getKey().equals("identity")));
    }

    @Test
    void aPaperThatAnotherProgramWroteAnewIsLookedAtAndTaken() {
        assertThatCode(() -> prove(whole(ReturnedPaperTest::respelled))).doesNotThrowAnyException();
    }

    @Test
    void aSignatureDrawnInItsRoomIsNoAlteration() {
        assertThatCode(() -> prove(whole(document -> ink(document, 0)))).doesNotThrowAnyException();
        assertThatThrownBy(() -> prove(whole(document -> ink(document, 200))))
                .hasMessageContaining("something laid over it (Ink)");
    }

    static Stream<Arguments> alterations() {
        return Stream.of(
                Arguments.of(
                        "another price written over the first", (Act) ReturnedPaperTest::priceWritten, "page 1: '"),
                Arguments.of("a price painted over", (Act) ReturnedPaperTest::painted, "page 1: its picture"),
                Arguments.of("a page taken out", (Act) document -> document.removePage(1), "number of pages"),
                Arguments.of("a page put in", (Act) document -> document.addPage(new PDPage()), "number of pages"),
                Arguments.of(
                        "a page turned",
                        (Act) document -> document.getPage(0).setRotation(180),
                        "page 1: size or rotation"),
                Arguments.of("a field moved", (Act) ReturnedPaperTest::moved, "field 'order-one': its place"),
                Arguments.of("a field taken out", (Act) ReturnedPaperTest::fieldGone, "field 'decline-both': gone"),
                Arguments.of("a field put in", (Act) ReturnedPaperTest::fieldAdded, "field 'discount': added"),
                Arguments.of(
                        "a note laid over", (Act) ReturnedPaperTest::note, "page 1: something laid over it (FreeText)"),
                Arguments.of(
                        "other words told to a screen reader",
                        (Act) ReturnedPaperTest::toldOtherwise,
                        "field 'order-both'"),
                Arguments.of(
                        "another kind of answer",
                        (Act) ReturnedPaperTest::otherValue,
                        "field 'choice': what it stands for"),
                Arguments.of("a script", (Act) ReturnedPaperTest::script, "an act on opening"),
                Arguments.of("an attached file", (Act) ReturnedPaperTest::attached, "an attached file"),
                Arguments.of("the identity", (Act) ReturnedPaperTest::identity, "field 'identity': its text"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("alterations")
    void anAlterationIsRefusedByName(String what, Act act, String named) {
        for (var returned : List.of(whole(act), behind(act))) {
            assertThatThrownBy(() -> prove(returned))
                    .isInstanceOf(Refusal.class)
                    .hasMessageContaining("altered: ")
                    .hasMessageContaining(named);
        }
    }

    @Test
    void twoButtonsOfOneGroupAreTwoChoices() {
        Act two = document -> document.getDocumentCatalog().getAcroForm().getField("choice").getWidgets().stream()
                .limit(2)
                .forEach(widget -> widget.getAppearance().getNormalAppearance().getSubDictionary().keySet().stream()
                        .filter(name -> !name.equals(COSName.Off))
                        .forEach(name -> widget.setAppearanceState(name.getName())));
        assertThatThrownBy(() -> ReturnedPaper.open(whole(two)).answers())
                .hasMessageContaining("field 'choice'")
                .hasMessageContaining("take-both and take-one are both chosen");
    }

    @Test
    void aTickThatIsSeenButNotKeptIsRefused() {
        Act seen = document -> document.getDocumentCatalog()
                .getAcroForm()
                .getField("order-one")
                .getWidgets()
                .get(0)
                .setAppearanceState("Yes");
        assertThatThrownBy(() -> ReturnedPaper.open(whole(seen)).answers())
                .hasMessageContaining("field 'order-one'")
                .hasMessageContaining("shows 'Yes', keeps nothing");
    }

    @Test
    void onlyAPdfOfReasonableSizeWithoutProtectionIsRead() throws IOException {
        refused(new byte[0], "an empty file");
        refused("Dear shop, I take both.".getBytes(StandardCharsets.US_ASCII), "not a PDF");
        refused(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 0}, "a picture");
        refused(new byte[ReturnedPaper.MOST_BYTES + 1], "at most 20 MiB");
        refused(Arrays.copyOf(PAPER, 700), "damaged");
        refused(PaperHand.whole(PAPER, ReturnedPaperTest::protect), "protected by a password");
        refused(bomb(), "100 MiB when unpacked");
    }

    private static void refused(byte[] file, String named) {
        assertThatThrownBy(() -> ReturnedPaper.open(file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(named);
    }

    @Test
    void aPaperWithItsFieldsPrintedFastHasNoIdentity() {
        Act fast = document -> document.getDocumentCatalog().getAcroForm().flatten();
        assertThatThrownBy(() -> ReturnedPaper.open(whole(fast)).identity())
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("field 'identity'");
    }

    @Test
    void filesCutOrChangedAnywhereAreRefusedOrAsWrittenAndNeverBreakTheReader() {
        var random = new Random(20260612);
        for (int round = 0; round < 30; round++) {
            var file = behind.clone();
            for (int i = 0; i <= random.nextInt(6); i++) {
                file[random.nextInt(file.length)] = (byte) random.nextInt(256);
            }
            int length = round % 3 == 0 ? random.nextInt(file.length) : file.length;
            var cut = Arrays.copyOf(file, length);
            assertThatCode(() -> {
                        try {
                            var paper = ReturnedPaper.open(cut);
                            paper.identity();
                            paper.proveAgainst(PAPER);
                            paper.answers();
                        } catch (Refusal refusal) {
                            assertThat(refusal.getMessage()).isNotBlank();
                        }
                    })
                    .as("round " + round + " of seed 20260612")
                    .doesNotThrowAnyException();
        }
    }

    private final byte[] behind = behind();

    private static void ink(PDDocument document, float higher) {
        try {
            var field = document.getDocumentCatalog().getAcroForm().getField("drawn-signature");
            var room = field.getWidgets().get(0).getRectangle();
            var drawn = new PDAnnotationInk();
            drawn.setRectangle(new PDRectangle(room.getLowerLeftX() + 5, room.getLowerLeftY() + 5 + higher, 100, 20));
            for (var page : document.getPages()) {
                var annotations = new ArrayList<>(page.getAnnotations());
                if (annotations.stream()
                        .anyMatch(each ->
                                "drawn-signature".equals(each.getCOSObject().getString(COSName.T)))) {
                    annotations.add(drawn);
                    page.setAnnotations(annotations);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void respelled(PDDocument document) throws IOException {
        for (var page : document.getPages()) {
            var tokens = new PDFStreamParser(page).parse();
            tokens.add(0, Operator.getOperator("q"));
            tokens.add(Operator.getOperator("Q"));
            var stream = new PDStream(document);
            try (var out = stream.createOutputStream(COSName.FLATE_DECODE)) {
                new ContentStreamWriter(out).writeTokens(tokens);
            }
            page.setContents(stream);
        }
    }

    private static void priceWritten(PDDocument document) throws IOException {
        try (var pen = new PDPageContentStream(document, document.getPage(0), AppendMode.APPEND, true, true)) {
            pen.beginText();
            pen.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 11);
            pen.newLineAtOffset(100, 300);
            pen.showText("$38.98");
            pen.endText();
        }
    }

    private static void painted(PDDocument document) throws IOException {
        try (var pen = new PDPageContentStream(document, document.getPage(0), AppendMode.APPEND, true, true)) {
            pen.setNonStrokingColor(1f, 1f, 1f);
            pen.addRect(100, 480, 60, 40);
            pen.fill();
        }
    }

    private static void moved(PDDocument document) {
        var widget = document.getDocumentCatalog()
                .getAcroForm()
                .getField("order-one")
                .getWidgets()
                .get(0);
        var box = widget.getRectangle();
        widget.setRectangle(
                new PDRectangle(box.getLowerLeftX(), box.getLowerLeftY() + 40, box.getWidth(), box.getHeight()));
    }

    private static void fieldGone(PDDocument document) throws IOException {
        var form = document.getDocumentCatalog().getAcroForm();
        var field = form.getField("decline-both");
        var widget = field.getWidgets().get(0);
        var fields = new ArrayList<>(form.getFields());
        fields.removeIf(each -> each.getPartialName().equals("decline-both"));
        form.setFields(fields);
        for (var page : document.getPages()) {
            var left = new ArrayList<PDAnnotation>(page.getAnnotations());
            if (left.removeIf(each -> each.getCOSObject() == widget.getCOSObject())) {
                page.setAnnotations(left);
            }
        }
    }

    private static void fieldAdded(PDDocument document) {
        var form = document.getDocumentCatalog().getAcroForm();
        var field = new PDTextField(form);
        field.setPartialName("discount");
        var fields = new ArrayList<>(form.getFields());
        fields.add(field);
        form.setFields(fields);
    }

    private static void note(PDDocument document) throws IOException {
        var note = new PDAnnotationFreeText();
        note.setRectangle(new PDRectangle(100, 480, 60, 20));
        note.setContents("$300.00");
        var annotations = new ArrayList<>(document.getPage(0).getAnnotations());
        annotations.add(note);
        document.getPage(0).setAnnotations(annotations);
    }

    private static void toldOtherwise(PDDocument document) {
        document.getDocumentCatalog().getAcroForm().getField("order-both").setAlternateFieldName("I pay half of it");
    }

    private static void otherValue(PDDocument document) {
        var widget = document.getDocumentCatalog()
                .getAcroForm()
                .getField("choice")
                .getWidgets()
                .get(1);
        var looks = (org.apache.pdfbox.cos.COSDictionary)
                widget.getAppearance().getNormalAppearance().getCOSObject();
        looks.setItem("take-half", looks.getDictionaryObject("take-one"));
        looks.removeItem(COSName.getPDFName("take-one"));
    }

    private static void script(PDDocument document) {
        document.getDocumentCatalog().setOpenAction(new PDActionJavaScript("app.alert('pay')"));
    }

    private static void attached(PDDocument document) {
        var names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(new PDEmbeddedFilesNameTreeNode());
        document.getDocumentCatalog().setNames(names);
    }

    private static void identity(PDDocument document) {
        var field = document.getDocumentCatalog().getAcroForm().getField("identity");
        field.getCOSObject()
                .setString(
                        COSName.V,
                        field.getValueAsString().replaceAll("\\|[0-9a-f]{64}\\|", "|" + "0".repeat(64) + "|"));
    }

    private static void protect(PDDocument document) throws IOException {
        var policy = new StandardProtectionPolicy("owner", "", new AccessPermission());
        policy.setEncryptionKeyLength(128);
        document.protect(policy);
    }

    private static byte[] bomb() throws IOException {
        var out = new ByteArrayOutputStream();
        out.write("%PDF-1.7\n1 0 obj\n<</Filter/FlateDecode>>\nstream\n".getBytes(StandardCharsets.US_ASCII));
        try (var packed = new DeflaterOutputStream(out)) {
            var empty = new byte[1024 * 1024];
            for (int i = 0; i < 110; i++) {
                packed.write(empty);
            }
        }
        return out.toByteArray();
    }
}
