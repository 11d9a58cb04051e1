package fairflame.repair;

import fairflame.Refusal;
import fairflame.catalog.JointKind;
import fairflame.catalog.Part;
import fairflame.catalog.PartNeed;
import fairflame.catalog.Per;
import fairflame.catalog.Shop;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The parts and consumables that a planned task uses up, as rows of the shop's list. */
final class PartsOf {
    private final Shop shop;
    private final RepairInputs inputs;

    PartsOf(Shop shop, RepairInputs inputs) {
        this.shop = shop;
        this.inputs = inputs;
    }

    List<ScopedPart> list(PlannedTask planned) {
        var parts = new ArrayList<ScopedPart>();
        for (var need : planned.task().needs()) {
            parts.addAll(
                    switch (need.role()) {
                        case PartNeed.DEVICE -> devices(planned, need);
                        case PartNeed.FITTING -> fittings(planned, need);
                        case PartNeed.PIPE -> pipes(planned, need);
                        default ->
                            need.size().equals(PartNeed.PIPE)
                                    ? alongRuns(planned, need)
                                    : List.of(part(need.role(), planned, need));
                    });
        }
        return parts;
    }

    private List<ScopedPart> devices(PlannedTask planned, PartNeed need) {
        if (planned.devices().isEmpty()) {
            throw Refusal.missing(
                    "device of task " + planned.task().id(), "the finding has to name what is to be replaced");
        }
        return planned.devices().stream()
                .map(device -> scoped(device, need.size(), need.quantity(), planned))
                .toList();
    }

    private ScopedPart part(String role, PlannedTask planned, PartNeed need) {
        return scoped(role, need.size(), need.quantity().multiply(planned.count(need.per())), planned);
    }

    private ScopedPart scoped(String role, String wanted, BigDecimal quantity, PlannedTask planned) {
        var openSize = wanted.equals(PartNeed.PLATE) && sizeRead(role, planned).isEmpty();
        var part = openSize ? shop.anySize(role) : shop.part(role, size(role, wanted, planned));
        return new ScopedPart(part, sold(part, quantity), why(role, wanted, openSize, planned));
    }

    private String size(String role, String wanted, PlannedTask planned) {
        return switch (wanted) {
            case PartNeed.PLATE -> sizeRead(role, planned).orElse("");
            case PartNeed.INLET -> inletSize(planned);
            default -> wanted;
        };
    }

    /** The size that the gas line asks for, or else the one that was read off the old part. */
    private Optional<String> sizeRead(String role, PlannedTask planned) {
        return planned.line()
                .map(line -> line.sizes().get(role))
                .or(() -> Optional.ofNullable(inputs.sizes().get(role)));
    }

    /** Without a sized line the size of the heater's connection is read off, or the trade's usual 3/4 in is taken. */
    private String inletSize(PlannedTask planned) {
        return planned.line().map(PipeJob::inletSize).orElse(inputs.sizes().getOrDefault("inlet", "3/4"));
    }

    private static PipeJob line(PlannedTask planned) {
        return planned.line()
                .orElseThrow(() -> Refusal.missing(
                        "sizing record for task " + planned.task().id(), "a sized gas line: no pipe is sold by guess"));
    }

    private List<ScopedPart> pipes(PlannedTask planned, PartNeed need) {
        return line(planned).runs().stream()
                .map(run -> ofRun("pipe-" + run.material(), run, run.wholeFeet().multiply(need.quantity()), planned))
                .toList();
    }

    /** What a run takes in its own size, such as hangers. */
    private List<ScopedPart> alongRuns(PlannedTask planned, PartNeed need) {
        return line(planned).runs().stream()
                .map(run -> ofRun(need.role(), run, need.quantity().multiply(count(run, need.per())), planned))
                .toList();
    }

    private static BigDecimal count(PipeRun run, Per per) {
        return switch (per) {
            case FOOT -> run.wholeFeet();
            case FITTING -> run.fittingCount();
            case JOB, PIECE -> BigDecimal.ONE;
        };
    }

    private ScopedPart ofRun(String role, PipeRun run, BigDecimal quantity, PlannedTask planned) {
        var part = shop.part(role, run.size());
        return new ScopedPart(part, sold(part, quantity), why(role, PartNeed.PIPE, false, planned));
    }

    /** Fittings by kind. One that the task brings along anyway, such as the cock at the heater, is not sold twice. */
    private List<ScopedPart> fittings(PlannedTask planned, PartNeed need) {
        var line = line(planned);
        var brought = new TreeMap<String, BigDecimal>();
        planned.task().needs().stream()
                .filter(along -> along.per() == Per.JOB)
                .forEach(along -> brought.merge(along.role(), along.quantity(), BigDecimal::add));
        var parts = new ArrayList<ScopedPart>();
        // From the heater backwards, because what the task brings along stands there.
        for (int i = line.runs().size() - 1; i >= 0; i--) {
            var run = line.runs().get(i);
            var byRole = new TreeMap<String, BigDecimal>();
            run.fittings()
                    .forEach((kind, count) ->
                            byRole.merge(role(kind, run.material()), BigDecimal.valueOf(count), BigDecimal::add));
            byRole.forEach((role, count) -> {
                var left = count.subtract(brought.getOrDefault(role, BigDecimal.ZERO));
                brought.computeIfPresent(
                        role, (same, rest) -> rest.subtract(count).max(BigDecimal.ZERO));
                if (left.signum() > 0) {
                    parts.add(ofRun(role, run, left.multiply(need.quantity()), planned));
                }
            });
        }
        return parts;
    }

    private String role(String kind, String material) {
        var stem = shop.book().fittings().get(kind);
        if (stem == null) {
            throw Refusal.unknown(
                    "fitting of a gas line",
                    kind,
                    shop.book().fittings().keySet().stream().sorted().collect(Collectors.joining(", ")));
        }
        return stem.replace("MATERIAL", material);
    }

    /** What is cut to length is sold by it, everything else by the whole unit. */
    private static BigDecimal sold(Part part, BigDecimal quantity) {
        var plain = quantity.stripTrailingZeros();
        var exact = plain.scale() < 0 ? plain.setScale(0) : plain;
        return part.cutToLength() ? exact : exact.setScale(0, RoundingMode.CEILING);
    }

    private String why(String role, String wanted, boolean openSize, PlannedTask planned) {
        var joints = planned.task().rules().joints().entrySet().stream()
                .filter(joint -> joint.getValue().equals(role))
                .map(joint -> jointTitle(joint.getKey()))
                .sorted()
                .collect(Collectors.joining(", "));
        if (!joints.isEmpty()) {
            return "sealant for " + joints;
        }
        if (openSize) {
            return "like for like: rating or size is read off the old part before it is ordered";
        }
        return wanted.equals(PartNeed.PIPE) && planned.line().isPresent()
                ? line(planned).sizing().words()
                : "used up by " + planned.task().id();
    }

    private String jointTitle(String kind) {
        return shop.book().joints().stream()
                .filter(joint -> joint.id().equals(kind))
                .map(JointKind::title)
                .findFirst()
                .orElse(kind);
    }
}
