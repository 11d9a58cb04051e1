package fairflame.screen.bench;

import fairflame.diagnosis.Finding;
import fairflame.diagnosis.NextCheck;
import fairflame.diagnosis.ReadingVerdict;
import fairflame.quote.Gauge;
import fairflame.quote.Quote;
import java.util.List;
import java.util.Optional;

/**
 * What the use cases say about a draft.
 *
 * @param verdicts one for each reading, in the order of the readings
 * @param gauges pictures of measured against allowed
 * @param next what to do next, best first
 * @param quote priced choices, when the evidence allows a price
 * @param notPriced why there is no price yet; empty when there is one
 */
public record Judged(
        Finding finding,
        List<ReadingVerdict> verdicts,
        List<Gauge> gauges,
        List<NextCheck> next,
        Optional<Quote> quote,
        String notPriced) {
    public Judged {
        verdicts = List.copyOf(verdicts);
        gauges = List.copyOf(gauges);
        next = List.copyOf(next);
    }

    /** True when a danger gate is open: the paper goes away. */
    public boolean danger() {
        return finding instanceof Finding.StopWork;
    }
}
