package fairflame.visit;

import fairflame.store.Records;
import fairflame.store.StoredVisit;

/** Moves a stored visit on. */
final class VisitStates {
    private VisitStates() {}

    static void move(Records records, String visit, State state) {
        records.visits()
                .find(visit)
                .ifPresent(old -> records.visits()
                        .save(new StoredVisit(old.id(), state.word(), old.customer(), old.on(), old.text())));
    }
}
