package fairflame.quote;

import fairflame.wording.Spoken;
import java.util.List;

/**
 * The finding as the paper tells it.
 *
 * @param headline one plain sentence
 * @param causes exact words for the trade, one for each settled cause
 * @param supports what was measured and what it proves
 * @param ruledOut what was excluded and by which reading
 * @param unknown what is still open; for a diagnosis-only quote the next checks
 * @param gauges pictures of measured against allowed
 */
public record FindingSheet(
        @Spoken String headline,
        @Spoken List<String> causes,
        @Spoken List<String> supports,
        @Spoken List<String> ruledOut,
        @Spoken List<String> unknown,
        List<Gauge> gauges) {
    public FindingSheet {
        causes = List.copyOf(causes);
        supports = List.copyOf(supports);
        ruledOut = List.copyOf(ruledOut);
        unknown = List.copyOf(unknown);
        gauges = List.copyOf(gauges);
    }
}
