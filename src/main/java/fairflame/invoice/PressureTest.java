package fairflame.invoice;

import java.math.BigDecimal;

/**
 * The pressure test of new gas piping as it was done.
 *
 * @param psi pressure held, pounds per square inch
 * @param minutes how long
 * @param gaugeTopPsi top of the gauge's scale
 * @param medium air, nitrogen, carbon dioxide or another inert gas
 * @param witness inspector who was there; empty for none
 * @param held whether the pressure held
 */
public record PressureTest(
        BigDecimal psi, int minutes, BigDecimal gaugeTopPsi, String medium, String witness, boolean held) {}
