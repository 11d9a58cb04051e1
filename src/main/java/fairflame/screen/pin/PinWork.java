package fairflame.screen.pin;

/** What the digits ask of the use cases. All of it is about the person at work. */
public interface PinWork {
    /** Name of the person at work. */
    String person();

    /** Where the person stands with their digits. */
    State state();

    /** Tries digits. */
    Answer opens(String digits);

    /** Sets other digits; refused when the old ones are wrong or the new ones are no good. */
    void change(String old, String fresh);

    /** Whose digits open. */
    enum State {
        /** The person's own. */
        OWN,
        /** The demo shop's, told on the screen. */
        DEMO,
        /** None yet: they have to be set before a customer gets the screen. */
        NONE
    }

    /**
     * What came of a try.
     *
     * @param seconds until another try is looked at; 0 for at once
     */
    record Answer(boolean opens, long seconds) {}
}
