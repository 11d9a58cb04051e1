package fairflame.visit;

import fairflame.diagnosis.Finding;
import fairflame.quote.StopWorkSheet;
import fairflame.quote.StopWorkSheets;
import java.time.OffsetDateTime;
import java.util.List;

/** The sheet that a customer gets instead of a price. */
public final class Stopped {
    private Stopped() {}

    /**
     * The sheet for dangerous evidence.
     *
     * @param done what the technician did, a sentence each
     */
    public static StopWorkSheet sheet(
            Examination examined, Finding.StopWork danger, Library library, OffsetDateTime at, List<String> done) {
        var visit = examined.visit();
        return StopWorkSheets.of(
                danger,
                library.cautions(),
                new QuoteMaking(library).people(visit),
                new StopWorkSheets.Visit(
                        visit.id(), at, QuoteMaking.heater(visit.file().plate())),
                done);
    }
}
