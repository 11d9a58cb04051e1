package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.HeatRate;
import java.util.Optional;

/**
 * A gas appliance at a node.
 *
 * @param input as on the rating plate, at sea level, 1,000 to 50,000,000 Btu/h
 * @param inputAtSite as the maker states it for this altitude; empty to take the code's rule
 * @param ownLine the way a line of its own would take from the source; empty for the way of the present pipe
 */
public record Appliance(
        String id,
        String node,
        HeatRate input,
        InletRange inlet,
        Optional<HeatRate> inputAtSite,
        Optional<Route> ownLine) {
    private static final double SMALLEST = 1_000;
    private static final double LARGEST = 50_000_000;

    public Appliance {
        plausible("input", input);
        inputAtSite.ifPresent(rate -> plausible("input at site", rate));
    }

    /** One whose maker states nothing about altitude and that has no way of its own. */
    public Appliance(String id, String node, HeatRate input, InletRange inlet) {
        this(id, node, input, inlet, Optional.empty(), Optional.empty());
    }

    /** The id as people read it: {@code pool-heater} is a pool heater. */
    public String name() {
        return id.replace('-', ' ');
    }

    private static void plausible(String what, HeatRate rate) {
        if (rate.btuPerHour() < SMALLEST || rate.btuPerHour() > LARGEST) {
            throw Refusal.outOfRange(what, Figures.plain(rate.btuPerHour()) + " Btu/h", "1,000 to 50,000,000 Btu/h");
        }
    }
}
