/**
 * Values with units: pressure, gas flow, heat, length, temperature, electricity, water flow. May import only the root.
 * Conversion factors: NIST SP 811 (2008), appendix B.8 and B.9, named at each line of {@link fairflame.quantity.Unit}.
 */
@NullMarked
package fairflame.quantity;

import org.jspecify.annotations.NullMarked;
