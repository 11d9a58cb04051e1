package fairflame.store;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.Optional;

/** The bytes of a thing about to be stored for ever. */
final class Content {
    private final byte[] bytes;

    Content(byte[] bytes) {
        this.bytes = bytes.clone();
    }

    byte[] bytes() {
        return bytes.clone();
    }

    String digest() {
        return Digest.of(bytes);
    }

    /** Whether just this is stored already; other content in its place is refused. */
    boolean isThere(Optional<byte[]> stored, String what, String subject) {
        if (stored.isEmpty()) {
            return false;
        }
        if (!Arrays.equals(stored.get(), bytes)) {
            throw Refusal.notAllowed(
                    what, subject + " with other content", "the content stored under that number, which never changes");
        }
        return true;
    }
}
