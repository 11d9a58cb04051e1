package fairflame.store;

import fairflame.Refusal;

/** Name of the laptop that something comes from. */
final class Origin {
    private Origin() {}

    static String named(String origin) {
        if (!origin.matches("[a-z0-9][a-z0-9-]{0,39}")) {
            throw Refusal.malformed("name of a laptop", origin, "up to 40 small letters, digits and dashes");
        }
        return origin;
    }
}
