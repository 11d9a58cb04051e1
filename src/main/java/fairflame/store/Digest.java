package fairflame.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 in hexadecimal: tells in the journal and beside each body what the bytes were when they were stored. */
final class Digest {
    private Digest() {}

    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new StoreException("every Java platform has SHA-256", e);
        }
    }

    static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }
}
