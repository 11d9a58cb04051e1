package fairflame.quote;

import fairflame.wording.Spoken;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * What the customer gets instead of a price when the evidence is dangerous. No amount, task or repair stands on it.
 *
 * @param visit id of the visit
 * @param at when the danger was found
 * @param headline one plain sentence
 * @param dangers what was found, each with what to do now
 * @param done what the technician did: gas shut, tag hung, people told
 * @param always sentences that stand on every such sheet
 * @param receipt words beside the signature: receipt only, not an order
 */
public record StopWorkSheet(
        String visit,
        OffsetDateTime at,
        Party seller,
        String sellerLicence,
        Party customer,
        Party site,
        String heater,
        @Spoken String headline,
        List<Danger> dangers,
        @Spoken List<String> done,
        @Spoken List<String> always,
        @Spoken String receipt) {
    public StopWorkSheet {
        dangers = List.copyOf(dangers);
        done = List.copyOf(done);
        always = List.copyOf(always);
    }

    /**
     * One danger on the sheet.
     *
     * @param gate id of the gate, such as {@code G1}
     * @param found what was found or read
     * @param advice what to do now, a sentence each
     */
    public record Danger(
            String gate,
            @Spoken String title,
            @Spoken String found,
            @Spoken List<String> advice) {
        public Danger {
            advice = List.copyOf(advice);
        }
    }
}
