package fairflame.catalog;

/** What a standard time or a quantity of parts is counted by. */
public enum Per {
    /** Once for the task. */
    JOB,
    /** For each device replaced. */
    PIECE,
    /** For each foot of pipe. */
    FOOT,
    /** For each pipe fitting. */
    FITTING
}
