/**
 * What leaves the program: PDF, spreadsheet, data files, drawings. May import the domain, never store.
 */
@NullMarked
package fairflame.document;

import org.jspecify.annotations.NullMarked;
