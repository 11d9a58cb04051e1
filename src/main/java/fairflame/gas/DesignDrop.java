package fairflame.gas;

import fairflame.quantity.Pressure;

/**
 * The loss of pressure that sizing allows between a supply and the farthest outlet it feeds.
 *
 * @param low where the supply is below 1.5 psi
 * @param elevated from 1.5 psi on, to the farthest line regulator
 */
public record DesignDrop(Pressure low, Pressure elevated) {
    /** 0.5 in w.c. of IFGC table 402.4(2) and the propane tables; 1 psi of table 402.4(5). */
    public static DesignDrop ofCode() {
        return new DesignDrop(Pressure.ofInchesWater(0.5), Pressure.ofPsi(1));
    }

    Pressure under(Pressure supply) {
        return FlowEquation.at(supply) == FlowEquation.LOW ? low : elevated;
    }
}
