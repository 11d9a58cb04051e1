package fairflame.store;

import fairflame.Refusal;

/** A file taken at a visit. Its name has no folders, such as {@code wet-switch.jpg}. */
public final class Attachment {
    static final int MOST_BYTES = 24 * 1024 * 1024;
    private final String visit;
    private final String name;
    private final byte[] bytes;

    public Attachment(String visit, String name, byte[] bytes) {
        if (!name.matches("[A-Za-z0-9][A-Za-z0-9 ._-]{0,119}")) {
            throw Refusal.malformed("name of a file", name, "up to 120 letters, digits, blanks, dots and dashes");
        }
        if (bytes.length > MOST_BYTES) {
            throw Refusal.outOfRange("size of " + name, bytes.length + " bytes", "at most 24 MiB");
        }
        this.visit = visit;
        this.name = name;
        this.bytes = bytes.clone();
    }

    public String visit() {
        return visit;
    }

    public String name() {
        return name;
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    String subject() {
        return visit + "/" + name;
    }
}
