package fairflame.repair;

import fairflame.catalog.Per;
import fairflame.catalog.Task;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A task on its way into a scope: still without parts.
 *
 * @param devices that it is done on, each once; empty when readings tell none apart
 * @param pieces how many, where no device is named
 * @param line the gas line that it builds
 */
record PlannedTask(
        Task task, List<String> devices, BigDecimal pieces, Optional<PipeJob> line, String cause, String reason) {
    PlannedTask {
        devices = List.copyOf(devices);
    }

    /** The same task asked for twice is done once, on the devices of both. */
    PlannedTask merge(PlannedTask other) {
        var both = new ArrayList<>(devices);
        other.devices.stream().filter(device -> !both.contains(device)).forEach(both::add);
        return new PlannedTask(
                task, both, pieces.max(other.pieces), line.isPresent() ? line : other.line, cause, reason);
    }

    /** The same without a part that another task renews. */
    PlannedTask without(String part) {
        return new PlannedTask(task.without(part), devices, pieces, line, cause, reason);
    }

    /** Whether it leaves a part to another task that renews it too. */
    boolean leaves(String part) {
        return task.rules().leaves().contains(part);
    }

    /** Whether both are done on the same device, or one of them on no device that is known. */
    boolean meets(PlannedTask other) {
        return devices.isEmpty() || other.devices.isEmpty() || !Collections.disjoint(devices, other.devices);
    }

    BigDecimal count(Per per) {
        return switch (per) {
            case JOB -> BigDecimal.ONE;
            case PIECE -> devices.isEmpty() ? pieces : BigDecimal.valueOf(devices.size());
            case FOOT -> line.map(PipeJob::wholeFeet).orElse(BigDecimal.ZERO);
            case FITTING -> line.map(PipeJob::fittingCount).orElse(BigDecimal.ZERO);
        };
    }

    Map<Per, BigDecimal> counts() {
        var counts = new EnumMap<Per, BigDecimal>(Per.class);
        for (var per : Per.values()) {
            if (count(per).signum() > 0) {
                counts.put(per, count(per));
            }
        }
        return counts;
    }
}
