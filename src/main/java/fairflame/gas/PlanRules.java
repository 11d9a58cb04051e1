package fairflame.gas;

import fairflame.Refusal;
import fairflame.quantity.Pressure;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan may do in this place.
 *
 * @param newPipe how a changed part is sized
 * @param places where each material may be laid; a material that is not named is not laid
 * @param ownLines ids of the appliances that may get a line of their own
 * @param raised delivery pressure to which the supplier may go; empty when the place or the supplier forbids it
 * @param lineOutlet set pressure of new line regulators
 * @param highestIndoors greatest pressure that the place allows indoors
 * @param excessFlow loss of the excess-flow valve that the place asks for on new lines from the source; empty for none
 */
public record PlanRules(
        NewPipe newPipe,
        Map<Material, Set<Place>> places,
        Set<String> ownLines,
        Optional<Pressure> raised,
        Pressure lineOutlet,
        Pressure highestIndoors,
        Optional<Pressure> excessFlow) {
    // IFGC 402.6: 5 psi inside buildings, from memory, not checked; many places allow less.
    private static final Pressure CODE_INDOORS = Pressure.ofPsi(5);

    public PlanRules {
        places = Map.copyOf(places);
        ownLines = Set.copyOf(ownLines);
        if (raised.isPresent() && FlowEquation.at(raised.get()) == FlowEquation.LOW) {
            throw Refusal.outOfRange("raised delivery pressure", Figures.pressure(raised.get()), "1.5 psi or more");
        }
        if (FlowEquation.at(lineOutlet) != FlowEquation.LOW || lineOutlet.inchesWater() <= 0) {
            throw Refusal.outOfRange(
                    "outlet of line regulators", Figures.pressure(lineOutlet), "above 0, below 1.5 psi");
        }
    }

    /** How a changed part of the piping is sized. Both keep every appliance's minimum and the allowed drop. */
    public enum NewPipe {
        /** By the losses along each run alone. */
        BY_RUN,
        /** Besides, it carries its load over the longest length, as an inspector with the table will ask. */
        LONGEST_LENGTH
    }

    /**
     * The cautious ones: new pipe also by the longest length; polyethylene only buried, CSST never; own lines where the
     * layout says how they would run, else for the largest appliance; no raised delivery.
     */
    public static PlanRules cautious(Layout layout) {
        var low = FlowEquation.at(layout.source().pressure()) == FlowEquation.LOW;
        return new PlanRules(
                NewPipe.LONGEST_LENGTH,
                usualPlaces(),
                ownLinesOf(layout),
                Optional.empty(),
                low ? layout.source().underLoad() : usualOutlet(layout.gas().fuel()),
                CODE_INDOORS,
                Optional.empty());
    }

    private static Map<Material, Set<Place>> usualPlaces() {
        var places = new EnumMap<Material, Set<Place>>(Material.class);
        for (var material : Material.values()) {
            places.put(material, Set.of(Place.values()));
        }
        // IFGC 404.17: plastic pipe outdoors and underground only. CSST below ground only in listed sheathing.
        places.put(Material.POLYETHYLENE, Set.of(Place.BURIED));
        places.put(Material.CSST, Set.of(Place.INDOORS, Place.OUTDOORS));
        return places;
    }

    private static Set<String> ownLinesOf(Layout layout) {
        var named = layout.appliances().stream()
                .filter(appliance -> appliance.ownLine().isPresent())
                .map(Appliance::id)
                .collect(java.util.stream.Collectors.toSet());
        return named.isEmpty() ? Set.of(layout.largest().id()) : named;
    }

    // Usual settings of line regulators: common practice, no source.
    private static Pressure usualOutlet(Fuel fuel) {
        return Pressure.ofInchesWater(fuel == Fuel.NATURAL ? 7 : 11);
    }

    /** The same with the delivery that supplier and place allow. */
    public PlanRules raising(Pressure to) {
        return new PlanRules(newPipe, places, ownLines, Optional.of(to), lineOutlet, highestIndoors, excessFlow);
    }

    public PlanRules sizedBy(NewPipe way) {
        return new PlanRules(way, places, ownLines, raised, lineOutlet, highestIndoors, excessFlow);
    }

    public PlanRules regulatedTo(Pressure outlet) {
        return new PlanRules(newPipe, places, ownLines, raised, outlet, highestIndoors, excessFlow);
    }

    public PlanRules atMostIndoors(Pressure highest) {
        return new PlanRules(newPipe, places, ownLines, raised, lineOutlet, highest, excessFlow);
    }

    public PlanRules withExcessFlow(Pressure loss) {
        return new PlanRules(newPipe, places, ownLines, raised, lineOutlet, highestIndoors, Optional.of(loss));
    }

    public PlanRules withOwnLines(Set<String> appliances) {
        return new PlanRules(newPipe, places, appliances, raised, lineOutlet, highestIndoors, excessFlow);
    }

    /** Only these materials, each where it may be laid. */
    public PlanRules only(Set<Material> materials) {
        var some = new EnumMap<Material, Set<Place>>(Material.class);
        places.forEach((material, where) -> {
            if (materials.contains(material)) {
                some.put(material, where);
            }
        });
        return new PlanRules(newPipe, some, ownLines, raised, lineOutlet, highestIndoors, excessFlow);
    }

    PlanRules unraised() {
        return new PlanRules(newPipe, places, ownLines, Optional.empty(), lineOutlet, highestIndoors, excessFlow);
    }

    boolean allows(Pipe pipe, Place place) {
        return places.getOrDefault(pipe.material(), Set.of()).contains(place);
    }

    boolean allows(Pressure pressure, Place place) {
        return place != Place.INDOORS || pressure.compareTo(highestIndoors) <= 0;
    }
}
