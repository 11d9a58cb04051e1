/**
 * SQLite and folders: repositories, migrations, audit. May import the domain above it in the map, never document.
 */
@NullMarked
package fairflame.store;

import org.jspecify.annotations.NullMarked;
