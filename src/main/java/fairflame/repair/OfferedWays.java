package fairflame.repair;

import fairflame.Refusal;
import fairflame.catalog.Remedy;
import fairflame.catalog.Way;
import fairflame.diagnosis.CaseFile;
import fairflame.gas.Reconciliation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The ways of a remedy that hold in a case, the suggested one first. */
final class OfferedWays {
    private final CaseFile file;
    private final RepairInputs inputs;

    OfferedWays(CaseFile file, RepairInputs inputs) {
        this.file = file;
        this.inputs = inputs;
    }

    List<OfferedWay> of(Remedy remedy, KnownFacts facts) {
        var offered = new LinkedHashMap<String, OfferedWay>();
        var unsized = new ArrayList<Way>();
        for (var way : remedy.ways()) {
            if (!facts.allow(way.when())) {
                continue;
            }
            if (way.run() == Way.Run.NONE) {
                var plain = new OfferedWay(remedy.cause(), way, Optional.empty());
                offered.putIfAbsent(plain.id(), plain);
            } else {
                unsized.add(way);
                lines(remedy, way).forEach(line -> offered.putIfAbsent(line.id(), line));
            }
        }
        if (offered.isEmpty()) {
            throw none(remedy, unsized);
        }
        return List.copyOf(offered.values());
    }

    private List<OfferedWay> lines(Remedy remedy, Way way) {
        var jobs = inputs.pipes().stream()
                .filter(job -> job.buried() == (way.run() == Way.Run.BURIED))
                .toList();
        if (!jobs.isEmpty()) {
            refuseUnexplained();
        }
        return jobs.stream()
                .map(job -> new OfferedWay(remedy.cause(), way, Optional.of(job)))
                .toList();
    }

    /** Pipe is sold only when its size explains the measured dip. */
    private void refuseUnexplained() {
        var pipe = file.pipe()
                .orElseThrow(() -> Refusal.missing(
                        "comparison of measured and computed dip", "the layout of the installed gas line"));
        if (pipe.verdict() != Reconciliation.Verdict.EXPLAINS) {
            throw Refusal.notAllowed(
                    "larger gas line",
                    pipe.words(),
                    "only when pipe size explains the measured dip; look first at: "
                            + (pipe.lookAt().isEmpty()
                                    ? "regulator, meter, valve, blockage"
                                    : String.join(", ", pipe.lookAt())));
        }
    }

    private static Refusal none(Remedy remedy, List<Way> unsized) {
        if (unsized.isEmpty()) {
            return Refusal.notAllowed(
                    "repair of cause", remedy.cause(), "a way in scopes.yaml whose conditions hold in this case");
        }
        var tasks = unsized.stream()
                .flatMap(way -> way.tasks().stream())
                .map(task -> task.task())
                .distinct()
                .collect(Collectors.joining(" or "));
        return Refusal.missing("sizing record for task " + tasks, "a sized gas line: no pipe is sold by guess");
    }
}
