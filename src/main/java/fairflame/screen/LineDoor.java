package fairflame.screen;

import fairflame.gas.Change;
import fairflame.gas.GasTables;
import fairflame.gas.LayoutReader;
import fairflame.gas.Plan;
import fairflame.screen.bench.Draft;
import fairflame.screen.line.LineWork;
import fairflame.visit.GasLine;
import fairflame.visit.Progress;
import fairflame.visit.Workplace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The line drawing's part of the door to a shop at work. */
final class LineDoor implements LineWork {
    private final Workplace workplace;

    LineDoor(Workplace workplace) {
        this.workplace = workplace;
    }

    @Override
    public GasTables tables() {
        return workplace.library().tables();
    }

    @Override
    public List<Way> ways(Draft draft, Progress progress) {
        var layout = new LayoutReader(tables()).read(draft.get("layout"));
        var choices =
                new GasLine(workplace.library()).plan(layout, draft.get("jurisdiction"), Optional.empty(), progress);
        return Stream.concat(choices.best().stream(), choices.alternatives().stream())
                .map(LineDoor::way)
                .toList();
    }

    private static Way way(Plan plan) {
        var changes = plan.changes().stream().map(Change::words).toList();
        return new Way(plan.kind().words(), plan.cost(), changes, plan.after());
    }
}
