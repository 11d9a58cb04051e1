/**
 * Fills spreadsheets that a shop lays out itself: placeholders in cells, rows and columns that are repeated or left out,
 * formulas that follow them. Knows nothing of quotes. May import only the root. Format: docs/formats/spreadsheet.md.
 */
@NullMarked
package fairflame.document.sheet;

import org.jspecify.annotations.NullMarked;
