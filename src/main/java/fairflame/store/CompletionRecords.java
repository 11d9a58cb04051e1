package fairflame.store;

import fairflame.invoice.Completion;
import java.util.List;
import java.util.Optional;

/** Permit, fitter and tests of signed work. The record grows; former states are kept. */
public interface CompletionRecords {
    /** Makes this the record that counts; nothing happens when it already is. */
    void put(String quote, int revision, Completion completion);

    /** The record that counts. */
    Optional<Completion> latest(String quote, int revision);

    /** All states, the first one first. */
    List<Completion> history(String quote, int revision);
}
