package fairflame.catalog;

import fairflame.Refusal;

/** Who may do a piece of work, by the letters of the knowledge files. */
public enum Trade {
    TECHNICIAN("T"),
    /** A technician where the jurisdiction lets one open a gas test tap, else the gas fitter. */
    TEST_TAP("T*"),
    GAS_FITTER("G"),
    ELECTRICIAN("E"),
    UTILITY("U");

    private final String letter;

    Trade(String letter) {
        this.letter = letter;
    }

    public String letter() {
        return letter;
    }

    public static Trade parse(String text) {
        for (var trade : values()) {
            if (trade.letter.equals(text.strip())) {
                return trade;
            }
        }
        throw Refusal.unknown("trade", text, "T, T*, G, E, U");
    }
}
