package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.SigningAct;
import fairflame.document.photo.PhotoFiles;
import fairflame.quote.Photo;
import fairflame.quote.Quote;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photographs of a visit, from the file to the paper and the seal. Pictures are drawn in the test. */
class PhotosTest {
    private static final String VISIT = "V-2026-0601";
    private static final Library LIBRARY = Library.load(Sources.samples());

    @TempDir
    Path folder;

    private Workplace workplace;
    private Photos photos;

    @BeforeEach
    void open() {
        var clock = Clock.fixed(Instant.parse("2026-06-03T17:05:00Z"), ZoneOffset.ofHours(-5));
        workplace = Workplace.open(folder.resolve("shop"), LIBRARY, clock, "Ines Calloway");
        photos = new Photos(workplace);
    }

    @AfterEach
    void close() {
        workplace.close();
    }

    private Quote offer() {
        return new Offer(workplace)
                .make(LIBRARY.visits().read(demo()), List.of())
                .match(Offer.Quoted::quote, halted -> {
                    throw new AssertionError("stopped");
                });
    }

    private static String demo() {
        try (var stream = PhotosTest.class.getResourceAsStream("/fairflame/demo/visit-1.json")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Path file(String name, byte[] content) throws IOException {
        return Files.write(folder.resolve(name), content);
    }

    private Photo shown() throws IOException {
        var photo = photos.add(VISIT, file("wet switch (1).JPG", PhotoFiles.jpeg(400, 300)));
        photos.tell(VISIT, new Photo(photo.name(), "Water in the switch", "leak-outlet", photo.sha256(), true));
        return photos.of(VISIT).get(0);
    }

    @Test
    void aPhotoIsPrintedWithItsCaptionAndItsDigestIsSealed() throws IOException {
        offer();
        var photo = shown();
        assertThat(photo.name()).isEqualTo("wet-switch-1-.jpg");
        var quote = offer();
        assertThat(quote.revision()).as("a photo makes a new revision").isEqualTo(2);
        assertThat(quote.photos()).containsExactly(photo);
        try (var paper =
                Loader.loadPDF(folder.resolve("shop/" + quote.number() + ".pdf").toFile())) {
            assertThat(new PDFTextStripper().getText(paper)).contains("What we saw", "Water in the switch");
            assertThat(pictures(paper)).isEqualTo(1);
        }
        sign(quote);
        var sealed = Files.readString(folder.resolve("shop/" + quote.number() + "-signed.json"));
        assertThat(sealed).contains(AwayPaper.digest(photos.picture(VISIT, photo.name())));
        assertThat(new Proof(workplace).of(quote.number()).holds()).isTrue();
    }

    private static int pictures(org.apache.pdfbox.pdmodel.PDDocument paper) throws IOException {
        int count = 0;
        for (var page : paper.getPages()) {
            for (var name : page.getResources().getXObjectNames()) {
                if (page.getResources().getXObject(name) instanceof PDImageXObject) {
                    count++;
                }
            }
        }
        return count;
    }

    private void sign(Quote quote) {
        var agreeing = new Agreeing(workplace);
        var act = new SigningAct(
                "Marguerite Oduya",
                "owner",
                workplace.now(),
                Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                agreeing.declines(quote, "both"),
                List.of(),
                "Ines Calloway");
        agreeing.sign(quote.number(), "both", act);
    }

    @Test
    void aPhotoMayBeTakenOutBeforeItIsSealedAndNotAfter() throws IOException {
        offer();
        var loose = photos.add(VISIT, file("loose.png", PhotoFiles.png(30, 20)));
        photos.remove(VISIT, loose.name());
        assertThat(photos.of(VISIT)).isEmpty();
        assertThatThrownBy(() -> photos.picture(VISIT, loose.name())).hasMessageContaining("photo");
        var photo = shown();
        sign(offer());
        assertThatThrownBy(() -> photos.remove(VISIT, photo.name()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("sealed with the signed quote");
        assertThatThrownBy(() -> photos.tell(VISIT, new Photo(photo.name(), "Dry", "", photo.sha256(), false)))
                .hasMessageContaining("sealed");
        photos.add(VISIT, file("after.png", PhotoFiles.png(31, 20)));
        assertThat(offer().revision())
                .as("a later photo changes nothing of what was signed")
                .isEqualTo(2);
        assertThat(photos.of(VISIT)).hasSize(2);
    }

    @Test
    void theFileOfAPhotoThatAQuoteListsStaysKept() throws IOException {
        offer();
        var photo = shown();
        offer();
        photos.remove(VISIT, photo.name());
        assertThat(photos.of(VISIT)).isEmpty();
        assertThat(photos.picture(VISIT, photo.name())).isNotEmpty();
        assertThat(offer().photos()).isEmpty();
    }

    @Test
    void thePictureTwiceIsOneAndAnotherUnderItsNameGetsANameOfItsOwn() throws IOException {
        offer();
        var first = photos.add(VISIT, file("a.png", PhotoFiles.png(30, 20)));
        assertThat(photos.add(VISIT, file("b.png", PhotoFiles.png(30, 20)))).isEqualTo(first);
        Files.createDirectories(folder.resolve("other"));
        var second = photos.add(VISIT, Files.write(folder.resolve("other/a.png"), PhotoFiles.png(30, 21)));
        assertThat(second.name()).isEqualTo("a-2.jpg");
        assertThat(photos.of(VISIT)).hasSize(2);
    }

    @Test
    void whatIsNoPictureOrOfNoVisitIsRefused() throws IOException {
        offer();
        var text = file("note.jpg", "not a picture".getBytes(StandardCharsets.US_ASCII));
        assertThatThrownBy(() -> photos.add(VISIT, text))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("note.jpg");
        var large = file("large.jpg", new byte[15 * 1024 * 1024 + 1]);
        assertThatThrownBy(() -> photos.add(VISIT, large)).hasMessageContaining("at most 15 MiB");
        assertThatThrownBy(() -> photos.add(VISIT, folder.resolve("nowhere.jpg")))
                .hasMessageContaining("nowhere.jpg");
        var picture = file("ok.png", PhotoFiles.png(30, 20));
        assertThatThrownBy(() -> photos.add("V-2026-9999", picture)).hasMessageContaining("V-2026-9999");
        var photo = photos.add(VISIT, picture);
        assertThatThrownBy(() -> photos.tell(VISIT, new Photo(photo.name(), "", "no-check", photo.sha256(), false)))
                .hasMessageContaining("no-check");
        assertThatThrownBy(() -> photos.remove(VISIT, "nothing.jpg")).hasMessageContaining("nothing.jpg");
    }
}
