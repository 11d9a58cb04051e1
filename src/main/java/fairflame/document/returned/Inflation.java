package fairflame.document.returned;

import fairflame.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Refuses a file whose packed parts would fill the memory when unpacked. */
final class Inflation {
    private static final int LIMIT = 100 * 1024 * 1024;
    private static final byte[] STREAM = "stream".getBytes(StandardCharsets.US_ASCII);
    private static final int BUFFER = 64 * 1024;
    // First byte of what java.util.zip and others pack with the usual window (RFC 1950).
    private static final byte PACKED = 0x78;

    private long unpacked;

    private Inflation() {}

    static void refuseAboveLimit(byte[] file) {
        var count = new Inflation();
        for (int i = 0; i + STREAM.length < file.length; i++) {
            if (Arrays.equals(file, i, i + STREAM.length, STREAM, 0, STREAM.length)) {
                int start = afterLineEnd(file, i + STREAM.length);
                if (start < file.length && file[start] == PACKED) {
                    count.unpack(file, start);
                }
            }
        }
    }

    private static int afterLineEnd(byte[] file, int from) {
        int at = from;
        while (at < file.length && (file[at] == '\r' || file[at] == '\n' || file[at] == ' ')) {
            at++;
        }
        return at;
    }

    private void unpack(byte[] packed, int from) {
        var inflater = new Inflater();
        try {
            inflater.setInput(packed, from, packed.length - from);
            var buffer = new byte[BUFFER];
            var first = new byte[0];
            while (!inflater.finished()) {
                int count = inflater.inflate(buffer);
                if (count == 0) {
                    break;
                }
                unpacked += count;
                if (unpacked > LIMIT) {
                    throw Refusal.outOfRange(
                            ReturnedPaper.WHAT, "more than 100 MiB when unpacked", "the PDF file that was sent");
                }
                if (first.length == 0) {
                    first = Arrays.copyOf(buffer, count);
                }
            }
            // Packed twice is packed to hide.
            if (first.length > 0 && first[0] == PACKED) {
                unpack(first, 0);
            }
        } catch (DataFormatException e) {
            // Not packed that way: the reader will judge it.
            return;
        } finally {
            inflater.end();
        }
    }
}
