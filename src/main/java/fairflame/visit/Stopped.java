package fairflame.visit;

import fairflame.diagnosis.Finding;
import fairflame.quote.StopWorkSheet;
import fairflame.quote.StopWorkSheets;
import fairflame.wording.Told;
import java.time.OffsetDateTime;
import java.util.List;

/** The sheet that a customer gets instead of a price. */
public final class Stopped {
    private Stopped() {}

    /**
     * The sheet for dangerous evidence, in the language of the visit's customer.
     *
     * @param done what the technician did, a sentence each
     */
    public static StopWorkSheet sheet(
            Examination examined, Finding.StopWork danger, Library library, OffsetDateTime at, List<String> done) {
        var visit = examined.visit();
        var told = library.in(visit.language());
        var sheet = StopWorkSheets.of(
                told.wording().isEnglish() ? danger : in(examined.in(told)),
                told.cautions(),
                new QuoteMaking(told).people(visit),
                new StopWorkSheets.Visit(
                        visit.id(), at, QuoteMaking.heater(visit.file().plate(), told.wording())),
                done);
        return Told.in(told.wording(), sheet);
    }

    private static Finding.StopWork in(Examination examined) {
        return examined.finding().match(Stopped::none, Stopped::none, danger -> danger);
    }

    private static Finding.StopWork none(Finding finding) {
        throw new IllegalStateException("a danger in one language only: " + finding);
    }
}
