package fairflame.quote;

import fairflame.catalog.Trade;
import fairflame.wording.Spoken;
import java.util.Set;

/**
 * One task of a choice as the paper lists it.
 *
 * @param task id of the catalog task
 * @param title exact words for the trade
 * @param plain plain words for the customer
 * @param cause id of the cause that it mends
 * @param reason why it is in the choice, one sentence
 * @param trades who has to do it in this place
 */
public record Work(
        String task,
        @Spoken String title,
        @Spoken String plain,
        String cause,
        @Spoken String reason,
        Set<Trade> trades) {
    public Work {
        trades = Set.copyOf(trades);
    }
}
