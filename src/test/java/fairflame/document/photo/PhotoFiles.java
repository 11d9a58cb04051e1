package fairflame.document.photo;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Pictures drawn for tests: red left half, blue right half, a green bar on top. */
public final class PhotoFiles {
    private PhotoFiles() {}

    public static byte[] jpeg(int wide, int high) {
        return written(wide, high, "jpeg");
    }

    public static byte[] png(int wide, int high) {
        return written(wide, high, "png");
    }

    private static byte[] written(int wide, int high, String form) {
        var picture = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        var pen = picture.createGraphics();
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, wide / 2, high);
        pen.setColor(Color.BLUE);
        pen.fillRect(wide / 2, 0, wide, high);
        pen.setColor(Color.GREEN);
        pen.fillRect(0, 0, wide, high / 4);
        pen.dispose();
        var bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, form, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** A JPEG with what a camera writes beside it: how it was held, and a place in words. */
    static byte[] held(int wide, int high, int orientation, String place) {
        var plain = jpeg(wide, high);
        var words = place.getBytes(StandardCharsets.US_ASCII);
        var exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + words.length);
        exif.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1));
        exif.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        exif.putShort((short) 1);
        exif.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        exif.putInt(0).put(words);
        var file = ByteBuffer.allocate(plain.length + 4 + exif.capacity());
        file.put(plain, 0, 2).put((byte) 0xFF).put((byte) 0xE1).putShort((short) (exif.capacity() + 2));
        file.put(exif.array()).put(plain, 2, plain.length - 2);
        return file.array();
    }
}
