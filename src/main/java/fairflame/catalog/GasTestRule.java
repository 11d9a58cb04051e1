package fairflame.catalog;

import java.math.BigDecimal;

/**
 * The pressure test that the place asks of new gas piping.
 *
 * @param psi test pressure, pounds per square inch
 * @param minutes how long it is held
 * @param gaugeFactor top of the gauge's scale, at most so many times the test pressure
 * @param witness whether an inspector has to be there
 */
public record GasTestRule(BigDecimal psi, int minutes, BigDecimal gaugeFactor, boolean witness, String source) {}
