package fairflame.document.page;

/** Where short lines stand in their column. */
public enum Align {
    LEFT,
    CENTRE,
    RIGHT
}
