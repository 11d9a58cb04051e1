package fairflame.store;

import static fairflame.store.Samples.VISIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class VisitsTest extends RecordsContract {
    private static final StoredVisit LATER = new StoredVisit(
            "V-2026-0002", "open", "Ünal Größe", Samples.DAY.plusDays(1), "{\"gas\":\"½ \u0000 \uD83D\uDD25\"}");

    @Test
    void aVisitComesBackAsItWasStored() {
        change(records -> records.visits().save(LATER));
        assertThat(seen().visits().find(LATER.id())).contains(LATER);
        assertThat(seen().visits().find("V-2026-0099")).isEmpty();
    }

    @Test
    void savingAgainReplacesTheText() {
        var now = new StoredVisit(VISIT.id(), "signed", "Odile M. Marsh", VISIT.on(), "{}");
        change(records -> records.visits().save(VISIT));
        change(records -> records.visits().save(now));
        assertThat(seen().visits().all()).containsExactly(now);
    }

    @Test
    void theLatestVisitStandsFirst() {
        change(records -> {
            records.visits().save(VISIT);
            records.visits().save(LATER);
        });
        assertThat(seen().visits().all()).containsExactly(LATER, VISIT);
        assertThat(seen().visits().inState("open")).containsExactly(LATER);
        assertThat(seen().visits().inState("none")).isEmpty();
    }

    @Test
    void whatIsTypedIsKeptUntilTheVisitIsStored() {
        change(records -> records.visits().saveDraft(VISIT.id(), "{\"compl"));
        change(records -> records.visits().saveDraft(VISIT.id(), "{\"complaint"));
        assertThat(seen().visits().draft(VISIT.id()))
                .contains(new Draft(VISIT.id(), Samples.OFFICE.at(), "{\"complaint"));

        change(records -> records.visits().save(VISIT));
        assertThat(seen().visits().draft(VISIT.id())).isEmpty();
        assertThat(seen().visits().drafts()).isEmpty();
    }

    @Test
    void savingAnUnchangedVisitStillDropsItsDraft() {
        change(records -> records.visits().save(VISIT));
        change(records -> records.visits().saveDraft(VISIT.id(), "x"));
        change(records -> records.visits().save(VISIT));
        assertThat(seen().visits().drafts()).isEmpty();
    }

    @Test
    void theDraftSavedLastStandsFirst() {
        change(records -> records.visits().saveDraft("A", "1"));
        store.change(
                new By("Bram", Instant.parse("2026-03-02T16:00:00Z")),
                records -> records.visits().saveDraft("B", "2"));
        assertThat(seen().visits().drafts()).extracting(Draft::visit).containsExactly("B", "A");
        change(records -> records.visits().dropDraft("B"));
        change(records -> records.visits().dropDraft("B"));
        assertThat(seen().visits().drafts()).extracting(Draft::visit).containsExactly("A");
    }

    @Test
    void draftsLeaveNoTraceInTheJournal() {
        change(records -> records.visits().saveDraft(VISIT.id(), "x"));
        assertThat(seen().audit().all()).isEmpty();
    }

    @Test
    void anIdOrStateThatSaysNothingIsRefused() {
        assertThatThrownBy(() -> new StoredVisit(" ", "open", "x", Samples.DAY, "{}"))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> new StoredVisit("V".repeat(81), "open", "x", Samples.DAY, "{}"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("1 to 80 characters");
        assertThatThrownBy(() -> new StoredVisit("V", "", "x", Samples.DAY, "{}"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("state of visit V");
    }
}
