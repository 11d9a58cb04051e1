package fairflame.catalog.upkeep;

/**
 * A row that cannot be taken over.
 *
 * @param row as a spreadsheet counts
 * @param number part number as it stands there, empty when there is none
 * @param reason one sentence: what, the value met, what is allowed
 */
public record RefusedRow(int row, String number, String reason) {}
