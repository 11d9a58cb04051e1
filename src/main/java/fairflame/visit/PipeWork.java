package fairflame.visit;

import fairflame.catalog.Jurisdiction;
import fairflame.gas.Change;
import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.gas.LeastCostPlan;
import fairflame.gas.Material;
import fairflame.gas.Pipe;
import fairflame.gas.Place;
import fairflame.gas.Plan;
import fairflame.gas.PlanChoices;
import fairflame.gas.PlanRules;
import fairflame.gas.Route;
import fairflame.gas.Segment;
import fairflame.quantity.Pressure;
import fairflame.repair.PipeJob;
import fairflame.repair.PipeRun;
import fairflame.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Sizes what a gas line needs, cheapest way first, as jobs that the repair scope can take. */
final class PipeWork {
    private static final int MOST_CHOICES = 3;

    private final GasTables tables;
    private final Layout layout;
    private final Wording wording;
    private final PipeCosts costs;

    private PipeWork(Library library, Jurisdiction place, Layout layout) {
        this.tables = library.tables();
        this.layout = layout;
        this.wording = library.wording();
        this.costs = new PipeCosts(library.shop(), place, library.tables(), layout);
    }

    /** The ways to lay more pipe; none when no layout was drawn or the line is enough as it is. */
    static List<PipeJob> jobs(Examination examined, Library library, Jurisdiction place) {
        return examined.layout()
                .map(layout -> new PipeWork(library, place, layout)
                        .jobs(choices(
                                layout,
                                library,
                                place,
                                examined.visit().repair().raised())))
                .orElse(List.of());
    }

    /** The plan whose job is offered first; empty when none is needed. */
    static Optional<Plan> suggested(Examination examined, Library library, Jurisdiction place) {
        return examined.layout()
                .flatMap(layout -> choices(
                                layout,
                                library,
                                place,
                                examined.visit().repair().raised())
                        .best())
                .filter(plan -> !plan.changes().isEmpty());
    }

    /**
     * The least-cost plan of a layout at a shop's own prices in a place.
     *
     * @param raised delivery pressure that the gas supplier has agreed to; without it none is weighed
     */
    static PlanChoices choices(Layout layout, Library library, Jurisdiction place, Optional<Pressure> raised) {
        return choices(layout, library, place, raised, Progress.UNWATCHED);
    }

    static PlanChoices choices(
            Layout layout, Library library, Jurisdiction place, Optional<Pressure> raised, Progress progress) {
        var rules = PlaceLimits.applied(PlanRules.cautious(layout), place);
        return LeastCostPlan.find(
                library.tables(),
                layout,
                new WatchedPrices(new PipeCosts(library.shop(), place, library.tables(), layout), progress),
                raised.map(rules::raising).orElse(rules));
    }

    private List<PipeJob> jobs(PlanChoices choices) {
        return Stream.concat(choices.best().stream(), choices.alternatives().stream())
                .filter(plan -> !plan.changes().isEmpty())
                .map(this::job)
                .filter(new Fresh()::take)
                .limit(MOST_CHOICES)
                .toList();
    }

    /** Two plans may lay the same pipe: on a line that serves the heater only, a line of its own is that line. */
    private static final class Fresh {
        private final Set<Object> seen = new HashSet<>();

        boolean take(PipeJob job) {
            return seen.add(List.of(job.runs(), job.also()));
        }
    }

    private PipeJob job(Plan plan) {
        var runs = new ArrayList<PipeRun>();
        var also = new ArrayList<String>();
        for (var change : plan.changes()) {
            change.pipe().ifPresent(pipe -> change.route().ifPresent(route -> runs.add(run(pipe, route))));
            if (change.kind() == Change.Kind.REGULATOR) {
                also.add("R20");
            } else if (change.kind() == Change.Kind.EXCESS_FLOW_VALVE) {
                also.add(PipeCosts.EXCESS_FLOW_TASK);
            }
        }
        return new PipeJob(
                id(plan, runs),
                wording.of(title(plan)),
                runs,
                inlet(plan),
                sizing(plan),
                wording.of(leaves(plan)),
                also,
                valves(plan));
    }

    /** The valve that lets the plan's largest new flow through. */
    private Map<String, String> valves(Plan plan) {
        return plan.changes().stream()
                .filter(change -> change.kind() == Change.Kind.EXCESS_FLOW_VALVE)
                .max(Comparator.comparing(change -> change.flow().cubicFeetPerHour()))
                .flatMap(change -> costs.valve(change.flow()))
                .map(valve -> Map.of(valve.role(), valve.size()))
                .orElse(Map.of());
    }

    private static PipeRun run(Pipe pipe, Route route) {
        return new PipeRun(
                pipe.material().word(),
                pipe.size(),
                route.length(),
                route.fittings().counts(),
                route.place() == Place.BURIED);
    }

    /** Told apart by what carries the plan and by what its pipe is made of, other than steel. */
    private static String id(Plan plan, List<PipeRun> runs) {
        var kind = switch (plan.kind()) {
            case OWN_LINE -> "own-line";
            case RAISED_PRESSURE -> "raised-pressure";
            case LARGER_PIPE, NOTHING -> "larger-line";
        };
        return runs.stream()
                .map(PipeRun::material)
                .filter(material -> !material.equals(Material.STEEL_SCHEDULE_40.word()))
                .findFirst()
                .map(material -> kind + "-" + material)
                .orElse(kind);
    }

    private static String title(Plan plan) {
        return switch (plan.kind()) {
            case OWN_LINE -> "A gas line of its own for the heater";
            case RAISED_PRESSURE -> "Higher gas pressure with a regulator at the heater";
            case LARGER_PIPE, NOTHING -> "Larger gas line";
        };
    }

    /** Shutoff and trap at the heater are steel: the size of the steel that reaches it, or the usual 3/4 in. */
    private String inlet(Plan plan) {
        var node = plan.after().largest().node();
        return plan.after().segments().stream()
                .filter(segment -> segment.to().equals(node))
                .map(Segment::pipe)
                .filter(pipe -> pipe.material() == Material.STEEL_SCHEDULE_40)
                .map(Pipe::size)
                .findFirst()
                .orElse("3/4");
    }

    private PipeJob.Sizing sizing(Plan plan) {
        var heater = layout.largest().id();
        var outlet = plan.firing().appliance(heater);
        var lays = plan.changes().stream()
                .filter(change -> change.kind() != Change.Kind.ONCE && change.kind() != Change.Kind.CAP)
                .map(Change::words)
                .map(wording::of)
                .map(words -> words.replaceFirst("\\.$", ""))
                .toList();
        var result = String.format(
                Locale.US,
                "With everything on, the heater then gets %.1f in w.c. (it needs %.1f) at %,.0f ft\u00B3/h.",
                outlet.pressure().inchesWater(),
                outlet.inlet().minimum().inchesWater(),
                outlet.flow().cubicFeetPerHour());
        var words = String.join("; ", lays) + ". " + wording.of(result);
        return new PipeJob.Sizing(words, "sizing equation of the fuel gas code with " + tables.edition());
    }

    private static String leaves(Plan plan) {
        return plan.firing().enough() ? "" : "Not every gas appliance has its pressure with everything on.";
    }
}
