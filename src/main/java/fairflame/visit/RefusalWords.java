package fairflame.visit;

import fairflame.Refusal;
import fairflame.wording.Wording;

/** A refusal as a customer reads it: what is not possible, why, and what is. */
public final class RefusalWords {
    private RefusalWords() {}

    /** The sentences, in the language of the wording. */
    public static String of(Refusal refusal, Wording wording) {
        var what = wording.of(refusal.what());
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + ": " + wording.of(refusal.value()) + ". "
                + wording.of("What is possible") + ": " + wording.of(refusal.allowed()) + ".";
    }
}
