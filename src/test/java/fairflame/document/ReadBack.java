package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.document.page.PageFormat;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A written paper, read back by another library. */
final class ReadBack {
    // No letter is taller, so that letters further apart need not be compared.
    private static final float TALLEST = 30;

    private final byte[] file;

    ReadBack(byte[] file) {
        this.file = file;
    }

    /** Text of each page, a line of the page on a line. */
    List<String> pages() throws IOException {
        var pages = new ArrayList<String>();
        try (var document = Loader.loadPDF(file)) {
            var stripper = new PDFTextStripper();
            stripper.setLineSeparator("\n");
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).strip() + "\n");
            }
        }
        return pages;
    }

    /** All text, with runs of space made one. */
    String text() throws IOException {
        return String.join(" ", pages()).replaceAll("\\s+", " ");
    }

    String golden() throws IOException {
        var all = new StringBuilder();
        var pages = pages();
        for (int i = 0; i < pages.size(); i++) {
            all.append("=== page ").append(i + 1).append('\n').append(pages.get(i));
        }
        return all.toString();
    }

    BufferedImage picture(int page, int dotsPerInch) throws IOException {
        try (var document = Loader.loadPDF(file)) {
            return new PDFRenderer(document).renderImageWithDPI(page - 1, dotsPerInch, ImageType.RGB);
        }
    }

    /** Every letter stands inside the margins, and no letter stands on another. */
    void assertWellSet(PageFormat format) throws IOException {
        try (var document = Loader.loadPDF(file)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                var letters = letters(document, page);
                assertThat(letters).as("letters of page %d", page).isNotEmpty();
                assertInside(letters, format, page);
                assertApart(letters, page);
            }
        }
    }

    private static List<TextPosition> letters(PDDocument document, int page) throws IOException {
        var letters = new ArrayList<TextPosition>();
        var stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                if (!letter.getUnicode().isBlank()) {
                    letters.add(letter);
                }
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return letters;
    }

    private static void assertInside(List<TextPosition> letters, PageFormat format, int page) {
        for (var letter : letters) {
            double right = letter.getX() + letter.getWidth();
            double size = letter.getFontSizeInPt();
            var where =
                    "page %d: '%s' at %.1f, %.1f".formatted(page, letter.getUnicode(), letter.getX(), letter.getY());
            assertThat((double) letter.getX()).as(where).isGreaterThanOrEqualTo(PageFormat.SIDE - 0.1);
            assertThat(right).as(where).isLessThanOrEqualTo(format.width() - PageFormat.SIDE + 0.1);
            assertThat(letter.getY() - 0.7 * size).as(where).isGreaterThanOrEqualTo(PageFormat.TOP - 0.1);
            assertThat(letter.getY() + 0.2 * size)
                    .as(where)
                    .isLessThanOrEqualTo(format.height() - PageFormat.BOTTOM + 0.1);
        }
    }

    private static void assertApart(List<TextPosition> letters, int page) {
        letters.sort(Comparator.comparing(TextPosition::getY));
        for (int i = 0; i < letters.size(); i++) {
            for (int j = i + 1;
                    j < letters.size() && letters.get(j).getY() - letters.get(i).getY() < TALLEST;
                    j++) {
                var a = letters.get(i);
                var b = letters.get(j);
                if (overlap(a.getX(), a.getWidth(), b.getX(), b.getWidth())
                        && overlap(a.getY() - body(a), body(a), b.getY() - body(b), body(b))) {
                    throw new AssertionError("page %d: '%s' stands on '%s' at %.1f, %.1f"
                            .formatted(page, a.getUnicode(), b.getUnicode(), a.getX(), a.getY()));
                }
            }
        }
    }

    // The height of a small letter: tails and tips of neighbouring lines may come close.
    private static float body(TextPosition letter) {
        return 0.5f * letter.getFontSizeInPt();
    }

    private static boolean overlap(float a, float aLength, float b, float bLength) {
        float free = 0.15f * Math.min(aLength, bLength);
        return a + aLength - free > b && b + bLength - free > a;
    }
}
