package fairflame.visit;

import fairflame.catalog.Jurisdiction;
import fairflame.repair.PipeJob;
import java.util.List;

/** Sizes what a gas line needs, cheapest way first, as jobs that the repair scope can take. */
final class PipeWork {
    private PipeWork() {}

    static List<PipeJob> jobs(Examination examined, Library library, Jurisdiction place) {
        return List.of();
    }
}
