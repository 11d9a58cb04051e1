package fairflame.gas;

import fairflame.quantity.GasFlow;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Which appliances burn, and how much.
 *
 * @param words as said over a profile
 * @param flows by appliance id; an appliance that is not named is off
 */
public record Firing(String words, Map<String, GasFlow> flows) {
    public Firing {
        flows = Map.copyOf(flows);
    }

    /** Everything at full fire. Diversity does not count here. */
    public static Firing all(Layout layout) {
        return of(
                layout,
                "all appliances firing",
                layout.appliances().stream().map(Appliance::id).toList());
    }

    /** One appliance at full fire. */
    public static Firing alone(Layout layout, String appliance) {
        return of(layout, appliance + " alone", java.util.List.of(appliance));
    }

    /** Some appliances at full fire. */
    public static Firing of(Layout layout, String words, Collection<String> appliances) {
        var flows = new LinkedHashMap<String, GasFlow>();
        appliances.forEach(id -> flows.put(id, layout.load(layout.appliance(id))));
        return new Firing(words, flows);
    }

    /** The same with one appliance at a flow that was measured. */
    public Firing with(String appliance, GasFlow flow) {
        var others = new LinkedHashMap<>(flows);
        others.put(appliance, flow);
        return new Firing(words, others);
    }

    double cubicFeetPerHour(String appliance) {
        return Optional.ofNullable(flows.get(appliance))
                .map(GasFlow::cubicFeetPerHour)
                .orElse(0.0);
    }

    /** Flow in every segment by its id. */
    Map<String, Double> bySegment(PipeTree tree) {
        var flows = new LinkedHashMap<String, Double>();
        for (var segment : tree.upstream()) {
            double sum = 0;
            for (var appliance : tree.standing(segment.to())) {
                sum += cubicFeetPerHour(appliance.id());
            }
            for (var next : tree.leaving(segment.to())) {
                sum += flows.getOrDefault(next.id(), 0.0);
            }
            flows.put(segment.id(), sum);
        }
        return flows;
    }
}
