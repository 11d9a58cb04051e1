package fairflame.catalog.upkeep;

/** Is told how far the work on a price list has come; ends the work by throwing, and then nothing of it is kept. */
@FunctionalInterface
public interface Watch {
    /** Rows between two reports. */
    int ROWS = 500;

    /** Nobody watches. */
    Watch NONE = (stage, rows) -> {};

    /** What is being done. */
    enum Stage {
        READING,
        COMPARING,
        STORING
    }

    /** So many rows are through. */
    void at(Stage stage, int rows);

    /** Reports every {@value #ROWS} rows only. */
    default void passing(Stage stage, int rows) {
        if (rows % ROWS == 0) {
            at(stage, rows);
        }
    }
}
