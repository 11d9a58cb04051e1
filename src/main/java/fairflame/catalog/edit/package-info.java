/**
 * Changing one field or row of a shop's text file and nothing else in it: comments, order and spacing of the rest stay
 * as a person wrote them. Pure; texts are handed in and come back. May import the root only.
 */
@NullMarked
package fairflame.catalog.edit;

import org.jspecify.annotations.NullMarked;
