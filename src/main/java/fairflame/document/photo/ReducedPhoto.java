package fairflame.document.photo;

import fairflame.Refusal;
import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * A photograph as it is kept: its picture alone, upright, as a JPEG of moderate size. What a camera writes beside the
 * picture, such as place, time and maker, is not carried over.
 */
public final class ReducedPhoto {
    /** Largest file that is taken, in bytes. */
    public static final int MOST_BYTES = 15 * 1024 * 1024;

    private static final int LONGEST_SIDE = 1600;
    private static final long MOST_DOTS = 80_000_000;
    private static final float QUALITY = 0.85f;
    private static final String ALLOWED = "a picture: JPEG, PNG, GIF, BMP or TIFF";

    private ReducedPhoto() {}

    /**
     * The kept form of a file, told by its content and not by its name.
     *
     * @param name stands in refusals: no picture, too large, damaged
     */
    public static byte[] of(String name, byte[] file) {
        if (file.length > MOST_BYTES) {
            throw Refusal.outOfRange("size of " + name, file.length + " bytes", "at most 15 MiB");
        }
        try (var input = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
            return jpeg(upright(picture(name, input), ExifTurn.of(file)));
        } catch (IOException | RuntimeException e) {
            if (e instanceof Refusal refusal) {
                throw refusal;
            }
            throw Refusal.malformed("picture " + name, "damaged (" + e.getMessage() + ")", ALLOWED);
        }
    }

    private static BufferedImage picture(String name, ImageInputStream input) throws IOException {
        var readers = ImageIO.getImageReaders(input);
        if (!readers.hasNext()) {
            throw Refusal.malformed("picture " + name, "not a picture", ALLOWED);
        }
        var reader = readers.next();
        try {
            reader.setInput(input, true, true);
            return read(name, reader);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage read(String name, ImageReader reader) throws IOException {
        int wide = reader.getWidth(0);
        int high = reader.getHeight(0);
        if ((long) wide * high > MOST_DOTS) {
            throw Refusal.outOfRange("picture " + name, wide + " by " + high + " dots", "at most 80 million dots");
        }
        var wish = reader.getDefaultReadParam();
        // Every so many dots are enough for twice the size that is kept.
        int step = Math.max(1, Math.max(wide, high) / (2 * LONGEST_SIDE));
        wish.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, wish);
    }

    private static BufferedImage upright(BufferedImage picture, ExifTurn turn) {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(picture.getWidth(), picture.getHeight()));
        int wide = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int high = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        var page = new BufferedImage(turn.lies() ? high : wide, turn.lies() ? wide : high, BufferedImage.TYPE_INT_RGB);
        var pen = page.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, page.getWidth(), page.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        var place = new AffineTransform(turn.onto(wide, high));
        place.scale((double) wide / picture.getWidth(), (double) high / picture.getHeight());
        pen.drawImage(picture, place, null);
        pen.dispose();
        return page;
    }

    private static byte[] jpeg(BufferedImage picture) throws IOException {
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var out = new MemoryCacheImageOutputStream(bytes)) {
            var wish = writer.getDefaultWriteParam();
            wish.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            wish.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), wish);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
