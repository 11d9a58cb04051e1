package fairflame.document.returned;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Looks at pages that another program wrote anew: their words one by one and their picture. Fields are left out of the
 * picture; what stands in them is read elsewhere.
 */
final class SecondLook {
    private static final int POINTS_PER_INCH = 72;
    private static final int DOTS_PER_INCH = 100;
    private static final double SCALE = (double) DOTS_PER_INCH / POINTS_PER_INCH;
    // A dot differs when it is so much darker or lighter than all dots around its place; fewer such dots than MOST are
    // the rounding of another program.
    private static final int STEP = 90;
    private static final int MOST = 3;
    private static final int AROUND_FIELD = 3;

    private final byte[] written;
    private final byte[] returned;
    private final Map<Integer, List<float[]>> fields;

    SecondLook(byte[] written, byte[] returned, Map<Integer, List<float[]>> fields) {
        this.written = written;
        this.returned = returned;
        this.fields = fields;
    }

    List<String> differences(List<Integer> pages) throws IOException {
        var found = new ArrayList<String>();
        try (var before = Loader.loadPDF(written);
                var after = Loader.loadPDF(returned)) {
            for (var page : pages) {
                words(before, after, page, found);
            }
            if (found.isEmpty()) {
                for (var page : pages) {
                    if (!sameLook(before, after, page)) {
                        found.add("page " + page + ": its picture");
                    }
                }
            }
        }
        return found;
    }

    private static void words(PDDocument before, PDDocument after, int page, List<String> found) throws IOException {
        var was = words(before, page);
        var is = words(after, page);
        for (int i = 0; i < Math.max(was.length, is.length); i++) {
            var one = i < was.length ? was[i] : "";
            var other = i < is.length ? is[i] : "";
            if (!one.equals(other)) {
                found.add("page " + page + ": '" + one + "' came back as '" + other + "'");
                return;
            }
        }
    }

    private static String[] words(PDDocument document, int page) throws IOException {
        var stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).strip().split("\\s+");
    }

    private boolean sameLook(PDDocument before, PDDocument after, int page) throws IOException {
        var was = picture(before, page);
        var is = picture(after, page);
        if (was.getWidth() != is.getWidth() || was.getHeight() != is.getHeight()) {
            return false;
        }
        return odd(was, is) <= MOST && odd(is, was) <= MOST;
    }

    private BufferedImage picture(PDDocument document, int page) throws IOException {
        var picture = new PDFRenderer(document).renderImageWithDPI(page - 1, DOTS_PER_INCH, ImageType.GRAY);
        var pen = picture.createGraphics();
        pen.setColor(java.awt.Color.WHITE);
        for (var box : fields.getOrDefault(page, List.of())) {
            int left = (int) (box[0] * SCALE) - AROUND_FIELD;
            int top = (int) (picture.getHeight() - box[3] * SCALE) - AROUND_FIELD;
            pen.fillRect(
                    left,
                    top,
                    (int) ((box[2] - box[0]) * SCALE) + 2 * AROUND_FIELD,
                    (int) ((box[3] - box[1]) * SCALE) + 2 * AROUND_FIELD);
        }
        pen.dispose();
        return picture;
    }

    /** Dots of the one picture that have no like near their place in the other. */
    private static int odd(BufferedImage one, BufferedImage other) {
        int count = 0;
        for (int y = 1; y < one.getHeight() - 1; y++) {
            for (int x = 1; x < one.getWidth() - 1; x++) {
                if (!likeNear(gray(one, x, y), other, x, y)) {
                    count++;
                }
            }
        }
        return count;
    }

    private static boolean likeNear(int shade, BufferedImage other, int x, int y) {
        if (Math.abs(shade - gray(other, x, y)) <= STEP) {
            return true;
        }
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                if (Math.abs(shade - gray(other, x + dx, y + dy)) <= STEP) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int gray(BufferedImage picture, int x, int y) {
        return picture.getRaster().getSample(x, y, 0);
    }
}
