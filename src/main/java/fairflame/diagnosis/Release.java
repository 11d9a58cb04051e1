package fairflame.diagnosis;

import fairflame.Refusal;

/**
 * A licensed person's signed release of a danger gate: the only thing that clears it.
 *
 * @param gate id of the gate, such as {@code G3}
 * @param name of the licensed person
 * @param licence number of the licence
 * @param cause what was found to have caused the danger; never empty
 */
public record Release(String gate, String name, String licence, String cause) {
    public Release {
        demand("gate", gate);
        demand("name of the licensed person", name);
        demand("licence number", licence);
        demand("cause", cause);
    }

    private static void demand(String what, String text) {
        if (text.isBlank()) {
            throw Refusal.missing(what + " of the release", "text; only a named, licensed release clears a gate");
        }
    }
}
