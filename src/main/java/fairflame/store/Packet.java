package fairflame.store;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;

/**
 * What a laptop hands to the office, in the order in which it has to be taken in.
 *
 * @param origin name of the laptop
 * @param made ISO 8601 in UTC
 */
public record Packet(String origin, String made, List<Item> items) {
    public Packet {
        Origin.named(origin);
        try {
            java.time.Instant.parse(made);
        } catch (java.time.format.DateTimeParseException e) {
            throw Refusal.malformed("time of the packet", made, "ISO 8601 in UTC");
        }
        items = List.copyOf(items);
    }

    /** The name of a laptop, refused when it is not one. */
    public static String named(String laptop) {
        return Origin.named(laptop);
    }

    /** SHA-256, hexadecimal. */
    public static String digest(byte[] bytes) {
        return Digest.of(bytes);
    }

    /** Kinds of item, in the order of taking in; seals stand between each other as they were sealed. */
    public enum Kind {
        VISIT("visits", ".json"),
        PHOTO("photos", ""),
        QUOTE("quotes", ".json"),
        SIGNED("sealed", ".json"),
        CHANGE("sealed", ".json"),
        COMPLETION("completions", ".json"),
        ACTUAL("actuals", ".json"),
        PAYMENT("payments", ".json");

        private final String folder;
        private final String ending;

        Kind(String folder, String ending) {
            this.folder = folder;
            this.ending = ending;
        }

        /** As in the manifest. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        static Kind parse(String word) {
            for (var kind : values()) {
                if (kind.word().equals(word)) {
                    return kind;
                }
            }
            throw Refusal.unknown(
                    "kind of item", word, "visit, photo, quote, signed, change, completion, actual, payment");
        }
    }

    /** One thing. */
    public static final class Item {
        private final Kind kind;
        private final String key;
        private final byte[] bytes;

        /**
         * An item.
         *
         * @param key what names it: id of a visit, number and revision, visit and file name
         */
        public Item(Kind kind, String key, byte[] bytes) {
            this.kind = kind;
            this.key = key;
            this.bytes = bytes.clone();
        }

        public Kind kind() {
            return kind;
        }

        public String key() {
            return key;
        }

        public byte[] bytes() {
            return bytes.clone();
        }

        /** SHA-256 of the bytes, hexadecimal. */
        public String digest() {
            return Digest.of(bytes);
        }

        String path() {
            return kind.folder + "/" + key.replace(' ', '-') + kind.ending;
        }
    }

    /** Collects items. */
    public static final class Builder {
        private final List<Item> items = new ArrayList<>();

        public Builder add(Kind kind, String key, byte[] bytes) {
            items.add(new Item(kind, key, bytes));
            return this;
        }

        public Packet from(String origin, java.time.Instant made) {
            return new Packet(origin, made.toString(), items);
        }
    }
}
