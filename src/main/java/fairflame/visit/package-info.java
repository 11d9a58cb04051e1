/**
 * The use cases that every face calls: read, find, price, sign, convert, pay, verify. May import everything but the faces;
 * the clock and the numbers come in here.
 */
@NullMarked
package fairflame.visit;

import org.jspecify.annotations.NullMarked;
