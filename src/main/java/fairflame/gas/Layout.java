package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * The gas piping of a site: a tree from one source through segments to appliances. The constructor refuses cycles,
 * orphans, pipe that serves nothing, and ids that stand twice.
 *
 * @param site what it is called on paper
 * @param altitude above sea level
 * @param drop allowed by sizing
 */
public record Layout(
        String site,
        Gas gas,
        Length altitude,
        Source source,
        List<Segment> segments,
        List<LineRegulator> regulators,
        List<Appliance> appliances,
        DesignDrop drop,
        Optional<Diversity> diversity) {
    public Layout {
        segments = List.copyOf(segments);
        regulators = List.copyOf(regulators);
        appliances = List.copyOf(appliances);
        Altitude.share(altitude);
        LayoutCheck.check(source.node(), segments, regulators, appliances);
    }

    /** The flow of an appliance at full fire on this site. */
    public GasFlow load(Appliance appliance) {
        return Altitude.input(appliance, altitude).flow(gas.heatingValue());
    }

    /** All appliances at full fire. */
    public GasFlow connectedLoad() {
        return appliances.stream().map(this::load).reduce(GasFlow.ofCubicFeetPerHour(0), GasFlow::plus);
    }

    public Appliance appliance(String id) {
        return appliances.stream()
                .filter(appliance -> appliance.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "appliance",
                        id,
                        String.join(", ", appliances.stream().map(Appliance::id).toList())));
    }

    public Segment segment(String id) {
        return segments.stream()
                .filter(segment -> segment.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "segment",
                        id,
                        String.join(", ", segments.stream().map(Segment::id).toList())));
    }

    /** The appliance with the largest input, the first of equals: the pool heater of most houses. */
    public Appliance largest() {
        return appliances.stream()
                .reduce((one, other) -> other.input().compareTo(one.input()) > 0 ? other : one)
                .orElseThrow();
    }

    /** The same site with other piping. */
    Layout with(List<Segment> otherSegments, List<LineRegulator> otherRegulators, List<Appliance> otherAppliances) {
        return new Layout(
                site, gas, altitude, source, otherSegments, otherRegulators, otherAppliances, drop, diversity);
    }

    /** The same piping on another delivery. */
    Layout from(Source other) {
        return new Layout(site, gas, altitude, other, segments, regulators, appliances, drop, diversity);
    }
}
