package fairflame.agreement;

/**
 * One place where sealed content is not what was sealed.
 *
 * @param path the field as a JSON Pointer (RFC 6901), such as {@code /quote/choices/0/lines/2/net}; empty for the whole
 */
public record Difference(String path, Kind kind) {
    @Override
    public String toString() {
        return (path.isEmpty() ? "the whole" : path) + ": " + kind.words;
    }

    /** What happened to it. */
    public enum Kind {
        ALTERED("altered since it was sealed"),
        ADDED("not there when it was sealed"),
        MISSING("sealed and now missing"),
        NOT_CANONICAL("same content, other bytes than were sealed"),
        UNREADABLE("cannot be read"),
        NOT_CHAINED("does not follow the seal before it");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
