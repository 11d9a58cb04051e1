package fairflame.document.page;

/** Solid for what is, dashed for what was or might be, dotted for what was not tested. */
public enum Dash {
    SOLID,
    DASHED,
    DOTTED
}
