package fairflame.screen.look;

import java.util.Objects;

/** The two palettes: one for sun, one for dusk and the pump room. */
public enum Theme {
    BRIGHT("bright.css"),
    DIM("dim.css");

    private final String sheet;

    Theme(String sheet) {
        this.sheet = sheet;
    }

    /** Address of the style sheet that gives the colours their values. */
    public String address() {
        return Objects.requireNonNull(Theme.class.getResource("/fairflame/screen/" + sheet), sheet)
                .toExternalForm();
    }

    public Theme other() {
        return this == BRIGHT ? DIM : BRIGHT;
    }
}
