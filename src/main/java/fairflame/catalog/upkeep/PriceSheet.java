package fairflame.catalog.upkeep;

import java.util.List;

/**
 * A price list as it came, all cells as text.
 *
 * @param name of the file
 * @param header the headings
 * @param rows below the headings, empty ones left out
 */
public record PriceSheet(String name, List<String> header, List<SheetRow> rows) {
    public PriceSheet {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param number as a spreadsheet counts, the first row of the sheet being 1
     * @param cells from the left; cells at the end may be left out
     */
    public record SheetRow(int number, List<String> cells) {
        public SheetRow {
            cells = List.copyOf(cells);
        }

        String cell(int column) {
            return column < cells.size() ? cells.get(column).strip() : "";
        }
    }
}
