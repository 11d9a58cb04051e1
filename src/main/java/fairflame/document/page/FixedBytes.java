package fairflame.document.page;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;

/**
 * Takes chance out of a written PDF. The writer draws two things at random: the file's /ID and the six letters before
 * the name of an embedded font's subset. Both have a fixed length and are overwritten with values taken from the rest.
 */
final class FixedBytes {
    private static final Pattern SUBSET = Pattern.compile("/([A-Z]{6})\\+(AtkinsonHyperlegible[A-Za-z-]+)");
    private static final Pattern ID = Pattern.compile("/ID ?\\[ ?<([0-9a-f]{32})> ?<([0-9a-f]{32})> ?\\]");

    private FixedBytes() {}

    static byte[] of(byte[] written) {
        // One char for one byte, so that every place stays where it was.
        var text = new StringBuilder(new String(written, StandardCharsets.ISO_8859_1));
        var subset = SUBSET.matcher(text.toString());
        while (subset.find()) {
            text.replace(subset.start(1), subset.end(1), letters(subset.group(2)));
        }
        var id = ID.matcher(text.toString());
        if (!id.find()) {
            throw new IllegalStateException("the written file has no /ID");
        }
        text.replace(id.start(1), id.end(1), "0".repeat(32));
        text.replace(id.start(2), id.end(2), "0".repeat(32));
        var digits = HexFormat.of().formatHex(digest(text.toString())).substring(0, 32);
        text.replace(id.start(1), id.end(1), digits);
        text.replace(id.start(2), id.end(2), digits);
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static String letters(String font) {
        var letters = new StringBuilder();
        for (var octet : digest(font)) {
            letters.append((char) ('A' + (octet & 0xFF) % 26));
        }
        return letters.substring(0, 6);
    }

    private static byte[] digest(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.ISO_8859_1));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
