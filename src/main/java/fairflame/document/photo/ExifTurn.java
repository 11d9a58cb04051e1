package fairflame.document.photo;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held, as it wrote it into a JPEG.
 *
 * @param orientation 1 to 8 as in Exif 2.3, tag 0x0112; 1 is upright
 */
record ExifTurn(int orientation) {
    private static final ExifTurn UPRIGHT = new ExifTurn(1);
    private static final int TAG = 0x0112;
    private static final int LAST = 8;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int ENTRY = 12;
    private static final String NAME = "Exif\0\0";

    /** The turn that stands in a file; upright where none does or the file makes no sense. */
    static ExifTurn of(byte[] file) {
        int at = 2;
        while (at + 4 < file.length && (file[at] & 0xFF) == 0xFF) {
            int marker = file[at + 1] & 0xFF;
            int length = ((file[at + 2] & 0xFF) << 8) | (file[at + 3] & 0xFF);
            if (marker == START_OF_SCAN || length < 2 || at + 2 + length > file.length) {
                return UPRIGHT;
            }
            if (marker == APP1 && startsWithName(file, at + 4)) {
                int from = at + 4 + NAME.length();
                return in(ByteBuffer.wrap(file, from, Math.max(0, at + 2 + length - from))
                        .slice());
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static boolean startsWithName(byte[] file, int at) {
        return at + NAME.length() <= file.length
                && new String(file, at, NAME.length(), StandardCharsets.ISO_8859_1).equals(NAME);
    }

    /** TIFF 6.0, section 2: byte order, place of the first directory, its entries. */
    private static ExifTurn in(ByteBuffer tiff) {
        if (tiff.limit() < 8) {
            return UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        if (directory < 8 || directory + 2 > tiff.limit()) {
            return UPRIGHT;
        }
        int count = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < count && directory + 2 + (i + 1) * ENTRY <= tiff.limit(); i++) {
            int entry = directory + 2 + i * ENTRY;
            int value = tiff.getShort(entry + 8) & 0xFFFF;
            if ((tiff.getShort(entry) & 0xFFFF) == TAG && value >= 1 && value <= LAST) {
                return new ExifTurn(value);
            }
        }
        return UPRIGHT;
    }

    /** Whether width and height change places. */
    boolean lies() {
        return orientation >= 5;
    }

    /** Brings a picture of this size upright. */
    AffineTransform onto(int wide, int high) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, wide, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, wide, high);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, high);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, high, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, high, wide);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, wide);
            default -> new AffineTransform();
        };
    }
}
