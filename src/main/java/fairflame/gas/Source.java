package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.Locale;
import java.util.Optional;

/**
 * Where the piping begins.
 *
 * @param node its node in the layout
 * @param pressure at its outlet with no gas flowing, 1 in w.c. to 20 psi
 * @param firing at its outlet while appliances fire, where it was read; never above {@code pressure}
 * @param capacity what it is rated to pass; empty when the stamp could not be read
 */
public record Source(Kind kind, String node, Pressure pressure, Optional<Pressure> firing, Optional<GasFlow> capacity) {
    private static final Pressure LEAST = Pressure.ofInchesWater(1);
    private static final Pressure MOST = Pressure.ofPsi(20);

    public Source {
        if (pressure.compareTo(LEAST) < 0 || pressure.compareTo(MOST) > 0) {
            throw Refusal.outOfRange("delivery pressure", Figures.pressure(pressure), "1 in w.c. to 20 psi");
        }
        if (firing.isPresent()
                && (firing.get().compareTo(pressure) > 0 || firing.get().inchesWater() <= 0)) {
            throw Refusal.outOfRange(
                    "delivery pressure while firing",
                    Figures.pressure(firing.get()),
                    "above 0 and up to " + Figures.pressure(pressure));
        }
        if (capacity.isPresent() && capacity.get().cubicFeetPerHour() <= 0) {
            throw Refusal.outOfRange("capacity of the source", "0", "above 0 ft3/h");
        }
    }

    /** The pressure that the piping starts from while gas flows. */
    public Pressure underLoad() {
        return firing.orElse(pressure);
    }

    /** Whose device it is. */
    public enum Kind {
        METER("meter"),
        TANK_REGULATOR("tank regulator");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** As typed: {@code meter}, {@code tank-regulator}. */
        public static Kind parse(String text) {
            var wanted = text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
            for (var kind : values()) {
                if (kind.words.equals(wanted)) {
                    return kind;
                }
            }
            throw Refusal.unknown("kind of source", text, "meter, tank-regulator");
        }
    }
}
