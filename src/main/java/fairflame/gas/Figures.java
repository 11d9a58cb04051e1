package fairflame.gas;

import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Figures in sentences, the same on every machine. */
final class Figures {
    private Figures() {}

    /** Inches of water below 1.5 psi, psi from there on; two decimals at most. */
    static String pressure(Pressure pressure) {
        return pressure.psi() < FlowEquation.SPLIT_PSI - 1e-9
                ? plain(pressure.inchesWater()) + " in w.c."
                : plain(pressure.psi()) + " psi";
    }

    static String feet(Length length) {
        return plain(length.feet()) + " ft";
    }

    /** Two decimals at most, no empty ones. */
    static String plain(double value) {
        var text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }

    /** Three significant digits and thousands marked, as the tables print. */
    static String cfh(double cubicFeetPerHour) {
        return three(cubicFeetPerHour) + " ft\u00B3/h";
    }

    static String three(double value) {
        if (value < 100) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        return String.format(Locale.ROOT, "%,.0f", new BigDecimal(value).round(new MathContext(3)));
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
