package fairflame.store;

import fairflame.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * One text file handed in from outside: UTF-8, at most {@value #MOST_BYTES} bytes. A byte order mark at the start is
 * dropped, because spreadsheet programs write one; line ends stay as they are.
 */
public final class TextFile {
    static final int MOST_BYTES = 2 * 1024 * 1024;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextFile() {}

    /** The whole text; every refusal names the file. */
    public static String read(Path file) {
        if (Files.isDirectory(file)) {
            throw Refusal.unusable("file", file, "a text file, not a folder");
        }
        try {
            return text(file);
        } catch (NoSuchFileException e) {
            throw Refusal.unusable("file", file, "an existing text file");
        } catch (AccessDeniedException e) {
            throw Refusal.unusable("file", file, "a file that this user may read");
        } catch (IOException e) {
            throw Refusal.unusable("file", file, "a file that can be read (" + e.getMessage() + ")");
        } catch (Refusal refusal) {
            throw refusal.at(file.toString());
        }
    }

    /** As {@link #read}, with the reasons of the file system left to the caller and no place named. */
    static String text(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            // Read one byte beyond the limit instead of asking for the size, which devices and growing files misstate.
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw Refusal.outOfRange("size of file", "more than " + MOST_BYTES + " bytes", "at most 2 MiB");
            }
            return decode(bytes);
        }
    }

    /** Strict: a wrong byte is refused with its offset from the start of the file, never replaced. */
    static String decode(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        if (result.isError()) {
            throw wrongByte(bytes[in.position()], in.position());
        }
        var text = out.flip().toString();
        // A zero byte is lawful UTF-8, but stands in no text a person wrote: the file is UTF-16 or not text at all.
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                throw wrongByte((byte) 0, i);
            }
        }
        return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    }

    private static Refusal wrongByte(byte found, int offset) {
        return Refusal.malformed(
                "text",
                String.format(Locale.ROOT, "byte 0x%02X at offset %d", found & 0xFF, offset),
                "UTF-8 text; save the file as UTF-8");
    }
}
