/**
 * SQLite and folders: repositories, numbered migrations, audit journal, text folders read at the edge, output folders
 * written all or nothing. May import the domain above it in the map, never document or a face. The tables stand in
 * {@code docs/formats/database.md}.
 */
@NullMarked
package fairflame.store;

import org.jspecify.annotations.NullMarked;
