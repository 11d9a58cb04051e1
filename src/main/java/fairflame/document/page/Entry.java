package fairflame.document.page;

/**
 * A field that is filled in on the paper itself (an interactive form, ISO 32000-1, 12.7).
 *
 * @param name by which what was filled in is found again; no dot, which would make a family of fields
 * @param told what belongs there, for a reader who cannot see the words beside it
 * @param kind what can be filled in
 * @param value of a radio button when it is the chosen one, of a fixed text its words; empty for others
 */
public record Entry(String name, String told, Kind kind, String value) {
    /** Longest text that a line takes. */
    public static final int LONGEST = 120;

    /** What can be filled in. */
    public enum Kind {
        LINE,
        TICK,
        /** One of several under the same name, all on one page. */
        RADIO,
        SIGNATURE,
        /** Not seen and not to be changed. */
        FIXED
    }

    public static Entry line(String name, String told) {
        return new Entry(name, told, Kind.LINE, "");
    }

    public static Entry tick(String name, String told) {
        return new Entry(name, told, Kind.TICK, "");
    }

    public static Entry radio(String name, String value, String told) {
        return new Entry(name, told, Kind.RADIO, value);
    }

    public static Entry signature(String name, String told) {
        return new Entry(name, told, Kind.SIGNATURE, "");
    }

    public static Entry fixed(String name, String words) {
        return new Entry(name, name, Kind.FIXED, words);
    }
}
