package fairflame.catalog;

/** Whether work of a class needs a permit in a place. */
public enum PermitNeed {
    NO,
    /** Offices differ: ask first, and print that it may be needed. */
    ASK,
    YES
}
