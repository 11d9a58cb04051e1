package fairflame.gas;

/**
 * The two sizing equations of IFGC 402.4 (NFPA 54 6.4), solved for flow and for loss.
 *
 * <p>D = Q^0.381 / (19.17 (dH / (Cr L))^0.206) below 1.5 psi and D = Q^0.381 / (18.93 ((P1^2 - P2^2) Y / (Cr L))^0.206)
 * from 1.5 psi on; Q in cubic feet per hour, D inches, L feet, dH inches of water, P pounds per square inch absolute.
 * The constants are from memory: the low-pressure form is confirmed by the printed tables, see docs/gas-methods.md.
 *
 * <p>Both lose "potential" in proportion to length: inches of water in the low form, absolute psi squared in the high
 * one. Losses in potential add up along a run, which pressures in the high form do not.
 */
enum FlowEquation {
    LOW("low-pressure equation", 19.17) {
        @Override
        double resistance(Gas gas) {
            return gas.cr();
        }

        @Override
        double potential(double inchesWater) {
            return inchesWater;
        }

        @Override
        double inchesWater(double potential) {
            return Math.max(0, potential);
        }
    },
    HIGH("high-pressure equation", 18.93) {
        @Override
        double resistance(Gas gas) {
            return gas.cr() / gas.y();
        }

        @Override
        double potential(double inchesWater) {
            var absolute = inchesWater / INCHES_PER_PSI + ATMOSPHERE;
            return absolute * absolute;
        }

        @Override
        double inchesWater(double potential) {
            return Math.max(0, (Math.sqrt(Math.max(0, potential)) - ATMOSPHERE) * INCHES_PER_PSI);
        }
    };

    /** IFGC 402.4: the low form holds below this inlet pressure, psi. */
    static final double SPLIT_PSI = 1.5;

    // 2018 IRC G2413.4: absolute pressure is gauge pressure plus 14.7 psi
    private static final double ATMOSPHERE = 14.7;
    // As the quantity package converts, so that 2 psi typed is 2 psi here; the code prints 27.7.
    private static final double INCHES_PER_PSI =
            fairflame.quantity.Pressure.ofPsi(1).inchesWater();
    private static final double FLOW_POWER = 0.381;
    private static final double LOSS_POWER = 0.206;

    private final String words;
    private final double constant;

    FlowEquation(String words, double constant) {
        this.words = words;
        this.constant = constant;
    }

    /** The form that holds for a supply pressure. */
    static FlowEquation at(fairflame.quantity.Pressure supply) {
        return supply.psi() < SPLIT_PSI - 1e-9 ? LOW : HIGH;
    }

    String words() {
        return words;
    }

    abstract double resistance(Gas gas);

    /** What a gauge pressure in inches of water is worth in the sum of losses. */
    abstract double potential(double inchesWater);

    /** The gauge pressure of a potential; none below the atmosphere. */
    abstract double inchesWater(double potential);

    /** Potential lost by a flow in a straight run. */
    double loss(Gas gas, double boreInches, double feet, double cubicFeetPerHour) {
        return resistance(gas)
                * feet
                * Math.pow(Math.pow(cubicFeetPerHour, FLOW_POWER) / (constant * boreInches), 1 / LOSS_POWER);
    }

    /** Flow that loses a potential in a straight run. */
    double flow(Gas gas, double boreInches, double feet, double loss) {
        return Math.pow(constant * boreInches * Math.pow(loss / (resistance(gas) * feet), LOSS_POWER), 1 / FLOW_POWER);
    }
}
