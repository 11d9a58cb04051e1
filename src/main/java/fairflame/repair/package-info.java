/**
 * From a settled finding to the scope of repair: tasks, parts, consumables, tests after, regulated class, pairing. May
 * import diagnosis, gas and catalog.
 */
@NullMarked
package fairflame.repair;

import org.jspecify.annotations.NullMarked;
