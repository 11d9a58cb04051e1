package fairflame.document.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReducedPhotoTest {
    private static BufferedImage kept(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(ReducedPhoto.of("photo", file)));
    }

    @Test
    void aLargePictureIsMadeSmallerAndASmallOneKeepsItsSize() throws IOException {
        var large = kept(PhotoFiles.jpeg(4000, 3000));
        assertThat(large.getWidth()).isEqualTo(1600);
        assertThat(large.getHeight()).isEqualTo(1200);
        assertThat(kept(PhotoFiles.png(300, 200)).getWidth()).isEqualTo(300);
    }

    @Test
    void whatTheCameraWroteBesideThePictureIsGone() {
        var file = PhotoFiles.held(300, 200, 1, "47.3769 N 8.5417 E");
        assertThat(text(file)).contains("Exif", "47.3769 N");
        assertThat(text(ReducedPhoto.of("photo", file))).doesNotContain("Exif").doesNotContain("47.3769");
    }

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }

    /**
     * Exif 2.3, table of tag 0x0112: where the stored first row and first column are seen. The green bar is the first
     * row, red the first column.
     */
    @ParameterizedTest(name = "{0}: {1} up, {2} left")
    @CsvSource({
        "1, top, left",
        "2, top, right",
        "3, bottom, right",
        "4, bottom, left",
        "5, left, top",
        "6, right, top",
        "7, right, bottom",
        "8, left, bottom"
    })
    void thePictureStandsUpright(int orientation, String firstRow, String firstColumn) throws IOException {
        var picture = kept(PhotoFiles.held(400, 240, orientation, ""));
        assertThat(picture.getWidth()).isEqualTo(orientation < 5 ? 400 : 240);
        assertThat(isGreen(picture, firstRow)).isTrue();
        var across = orientation < 5 ? firstColumn : "top".equals(firstColumn) ? "top" : "bottom";
        assertThat(isRed(picture, firstRow, across)).isTrue();
    }

    private static boolean isGreen(BufferedImage picture, String side) {
        return color(picture, side, 0.08, 0.5).getGreen() > 180;
    }

    /** Looks beyond the bar, a quarter along from the side where the first column is seen. */
    private static boolean isRed(BufferedImage picture, String bar, String column) {
        double along = column.equals("left") || column.equals("top") ? 0.25 : 0.75;
        return color(picture, bar, 0.6, along).getRed() > 180;
    }

    /** The colour so deep from a side and so far along it. */
    private static Color color(BufferedImage picture, String side, double deep, double along) {
        double x = Arrays.asList("left", "right").contains(side) ? deep : along;
        double y = Arrays.asList("left", "right").contains(side) ? along : deep;
        if (side.equals("right")) {
            x = 1 - deep;
        }
        if (side.equals("bottom")) {
            y = 1 - deep;
        }
        return new Color(picture.getRGB((int) (x * (picture.getWidth() - 1)), (int) (y * (picture.getHeight() - 1))));
    }

    @Test
    void theSamePictureGivesTheSameBytes() {
        var file = PhotoFiles.jpeg(900, 700);
        assertThat(ReducedPhoto.of("photo", file)).isEqualTo(ReducedPhoto.of("photo", file));
    }

    @Test
    void whatIsNoPictureOrTooLargeIsRefused() {
        refused("a letter".getBytes(StandardCharsets.US_ASCII), "not a picture");
        refused(new byte[0], "not a picture");
        refused("%PDF-1.7 and so on".getBytes(StandardCharsets.US_ASCII), "not a picture");
        refused(new byte[ReducedPhoto.MOST_BYTES + 1], "at most 15 MiB");
        refused(Arrays.copyOf(PhotoFiles.png(400, 300), 60), "damaged");
        refused(wide(), "at most 80 million dots");
    }

    private static void refused(byte[] file, String named) {
        assertThatThrownBy(() -> ReducedPhoto.of("photo", file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("photo")
                .hasMessageContaining(named);
    }

    /** A picture that says it is 30,000 by 30,000 dots (PNG, header only: W3C PNG, 11.2.2). */
    private static byte[] wide() {
        var file = PhotoFiles.png(30, 30);
        for (int at : new int[] {16, 20}) {
            file[at] = 0;
            file[at + 1] = 0;
            file[at + 2] = 0x75;
            file[at + 3] = 0x30;
        }
        return file;
    }
}
