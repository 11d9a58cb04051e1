package fairflame.screen.handover;

import fairflame.Refusal;
import fairflame.agreement.SignedRevision;
import fairflame.quote.Quote;
import fairflame.screen.away.AwayWork;
import fairflame.screen.pin.PinWork;
import fairflame.visit.LineStory;
import fairflame.visit.Progress;
import java.util.List;
import java.util.Optional;

/** What the handover asks of the use cases. */
public interface HandoverWork {
    /** What the customer has to accept for a choice, each by an act of its own, word for word. */
    List<Promise> promises(Quote quote, String choice, String language);

    /** The gas line before and after the suggested work; empty where the work is not on the line. */
    Optional<LineStory> line(Quote quote);

    /** Seals the revision; refused when it is out of date, a promise is missing or the name is. */
    SignedRevision sign(Quote quote, String choice, Act act, Progress progress);

    /** A refusal in the words of a language. */
    String told(Refusal refusal, String language);

    /** The part for the customer's copy. */
    CopyWork copies();

    /** The part for a customer who is away. */
    AwayWork away();

    /** The digits by which the customer's page is left. */
    PinWork pin();

    /**
     * A sentence to be accepted.
     *
     * @param id what it is kept under
     * @param declined id of the choice that it declines; empty for consent
     */
    record Promise(String id, String declined, String words) {}

    /**
     * The customer's act.
     *
     * @param role owner, tenant or agent
     * @param accepted the sentences that were accepted
     * @param strokes in thousandths of the pad's width
     * @param witness who stood by
     */
    record Act(String name, String role, List<Promise> accepted, List<List<Integer>> strokes, String witness) {
        public Act {
            accepted = List.copyOf(accepted);
            strokes = List.copyOf(strokes);
        }
    }
}
