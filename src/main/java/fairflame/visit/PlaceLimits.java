package fairflame.visit;

import fairflame.Refusal;
import fairflame.catalog.Jurisdiction;
import fairflame.gas.PlanRules;
import fairflame.quantity.Pressure;
import java.util.Optional;

/** What a place allows of gas piping, from the facts of its profile. */
final class PlaceLimits {
    /** Greatest gas pressure inside buildings, such as {@code 5psi}. */
    static final String INDOORS = "gasPressureIndoors";

    /** Loss of the excess-flow valve that the place asks for at the head of new lines; absent where it asks for none. */
    static final String EXCESS_FLOW = "excessFlowLoss";

    // The cautious side where the profile is silent: no more than the half pound up to which appliances are built.
    // Common practice, no source.
    private static final Pressure SILENT = Pressure.ofPsi(0.5);

    private PlaceLimits() {}

    /** The rules with the limits of the place in them. */
    static PlanRules applied(PlanRules rules, Jurisdiction place) {
        var limited = rules.atMostIndoors(pressure(place, INDOORS).orElse(SILENT));
        return pressure(place, EXCESS_FLOW).map(limited::withExcessFlow).orElse(limited);
    }

    private static Optional<Pressure> pressure(Jurisdiction place, String fact) {
        return Optional.ofNullable(place.facts().get(fact))
                .filter(text -> !text.equals("unknown"))
                .map(text -> {
                    try {
                        return Pressure.parse(text);
                    } catch (Refusal refusal) {
                        throw refusal.at("jurisdiction " + place.id() + " field facts." + fact);
                    }
                });
    }
}
