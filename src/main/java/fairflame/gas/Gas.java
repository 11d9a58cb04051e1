package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.HeatingValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A fuel gas as the sizing equations see it.
 *
 * @param specificGravity relative to air, 0.35 to 2.10, the range of IFGC Table A.2.4
 * @param assumed sentences for what was not given and is taken from the code; empty when all was given
 */
public record Gas(Fuel fuel, double specificGravity, HeatingValue heatingValue, List<String> assumed) {
    private static final double LIGHTEST = 0.35;
    private static final double HEAVIEST = 2.10;
    // IFGC A.4: absolute temperature of 60 F, rounded there to 460 + 60
    private static final double ABSOLUTE_TEMPERATURE = 520;

    public Gas {
        // Written so that a value that is not a number is refused as well.
        if (!(specificGravity >= LIGHTEST && specificGravity <= HEAVIEST)) {
            throw Refusal.outOfRange("specific gravity", specificGravity, LIGHTEST + " to " + HEAVIEST);
        }
        assumed = List.copyOf(assumed);
    }

    /** The gas of the code's tables: specific gravity 0.60 or 1.50, 1,000 or 2,500 Btu per cubic foot. */
    public static Gas ofCode(Fuel fuel) {
        return of(fuel, Optional.empty(), Optional.empty());
    }

    /** A gas of which the supplier's figures are given as far as they are known. */
    public static Gas of(Fuel fuel, Optional<Double> specificGravity, Optional<HeatingValue> heatingValue) {
        var code = CodeGas.of(fuel);
        var assumed = new ArrayList<String>();
        if (specificGravity.isEmpty()) {
            assumed.add(String.format(
                    Locale.ROOT, "specific gravity %.2f assumed, that of the code's tables", code.gravity));
        }
        if (heatingValue.isEmpty()) {
            assumed.add(String.format(Locale.ROOT, "%,.0f Btu/ft\u00B3 assumed: ask the gas supplier", code.btu));
        }
        return new Gas(
                fuel,
                specificGravity.orElse(code.gravity),
                heatingValue.orElse(HeatingValue.ofBtuPerCubicFoot(code.btu)),
                assumed);
    }

    /** The specific gravity that the code's tables and constants for this fuel are made for. */
    double codeGravity() {
        return CodeGas.of(fuel).gravity;
    }

    /** Cr of the sizing equations. */
    double cr() {
        var code = CodeGas.of(fuel);
        // IFGC A.4: Cr = 0.00354 S T (Z/S)^0.152, S specific gravity, T absolute temperature, Z viscosity in centipoise
        return specificGravity == code.gravity
                ? code.cr
                : 0.00354 * specificGravity * ABSOLUTE_TEMPERATURE * Math.pow(code.viscosity / specificGravity, 0.152);
    }

    /** Y of the high-pressure equation, the superexpansibility factor. */
    double y() {
        return CodeGas.of(fuel).y;
    }

    // Cr and Y: 2018 IRC Table G2413.4, the same as IFGC Table 402.4. Viscosity: IFGC A.4. Heating value: 1,000 in the
    // code's examples (2018 IFGC A.7.1); propane 2,500, Federal Register of 2007-03-21 as reprinted by gas suppliers.
    private enum CodeGas {
        NATURAL(0.60, 0.6094, 0.9992, 0.012, 1000),
        PROPANE(1.50, 1.2462, 0.9910, 0.008, 2500);

        private final double gravity;
        private final double cr;
        private final double y;
        private final double viscosity;
        private final double btu;

        CodeGas(double gravity, double cr, double y, double viscosity, double btu) {
            this.gravity = gravity;
            this.cr = cr;
            this.y = y;
            this.viscosity = viscosity;
            this.btu = btu;
        }

        static CodeGas of(Fuel fuel) {
            return fuel == Fuel.NATURAL ? NATURAL : PROPANE;
        }
    }
}
