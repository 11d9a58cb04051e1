package fairflame.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.CanonicalForm;
import fairflame.agreement.Sealing;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The journal, and the small things that are kept beside the papers: settings and records of completion. */
class JournalTest extends RecordsContract {
    @Test
    void everyChangeEntersTheJournalWithItsAuthorAndTime() {
        var signed = signed();
        change(records -> {
            records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed));
            records.audit().note("seal verified", "Q-2026-0001 revision 1");
        });
        var all = seen().audit().all();
        assertThat(all)
                .extracting(entry -> entry.position() + " " + entry.what() + " " + entry.subject())
                .containsExactly(
                        "1 visit stored as found V-2026-0001",
                        "2 quote stored Q-2026-0001 revision 1",
                        "3 revision signed Q-2026-0001 revision 1",
                        "4 invoice issued I-2026-0001",
                        "5 seal verified Q-2026-0001 revision 1");
        assertThat(all).allSatisfy(entry -> {
            assertThat(entry.who()).isEqualTo("Rosa Quill");
            assertThat(entry.at()).isEqualTo(Instant.parse("2026-03-02T15:04:05Z"));
        });
        assertThat(all.get(1).before()).isEmpty();
        assertThat(all.get(1).after()).isEqualTo(Digest.of(CanonicalForm.write(signed.quote())));
    }

    @Test
    void aChangeIsToldByTheDigestsBeforeAndAfter() {
        change(records -> records.settings().put("theme", "bright"));
        change(records -> records.settings().put("theme", "dim"));
        change(records -> records.settings().put("theme", "dim"));
        assertThat(seen().audit().about("theme"))
                .extracting(entry -> entry.before() + ">" + entry.after())
                .containsExactly(">" + Digest.of("bright"), Digest.of("bright") + ">" + Digest.of("dim"));
    }

    @Test
    void anAuthorHasAName() {
        assertThatThrownBy(() -> new By(" ", Instant.EPOCH)).isInstanceOf(Refusal.Missing.class);
    }

    @ParameterizedTest
    @MethodSource("changes")
    void aReadingTransactionChangesNothing(Consumer<Records> change) {
        assertThatThrownBy(() -> store.reading(records -> {
                    change.accept(records);
                    return "read";
                }))
                .isInstanceOf(IllegalStateException.class);
        assertThat(seen().audit().all()).isEmpty();
    }

    static List<Consumer<Records>> changes() {
        var quote = Samples.quote("Q-2026-0001", 1);
        var signed = Samples.signed(quote, Sealing.START);
        return List.of(
                records -> records.visits().save(Samples.VISIT),
                records -> records.visits().saveDraft("V", "x"),
                records -> records.visits().dropDraft("V"),
                records -> records.quotes().add(quote),
                records -> records.quotes().issue("Q", 2026, number -> quote),
                records -> records.agreements().add(signed),
                records ->
                        records.changeOrders().add(Samples.changeOrder("Q-2026-0001", 1, Sealing.START, Sealing.START)),
                records -> records.invoices().add(Samples.invoice("I-2026-0001", signed)),
                records -> records.invoices().issue("I", 2026, number -> Samples.invoice(number, signed)),
                records -> records.payments().add(Samples.receipt("P", "Q-2026-0001", Optional.empty(), "1.00")),
                records -> records.completionRecords().put("Q-2026-0001", 1, Samples.completion("")),
                records -> records.settings().put("theme", "dim"),
                records -> records.audit().note("x", "y"));
    }

    @Test
    void settingsAreReplacedAndListedByName() {
        change(records -> {
            records.settings().put("shop", "demo");
            records.settings().put("catalog", "/srv/catalog");
            records.settings().put("shop", "own");
        });
        assertThat(seen().settings().find("shop")).contains("own");
        assertThat(seen().settings().find("none")).isEmpty();
        assertThat(seen().settings().all())
                .containsExactly(Map.entry("catalog", "/srv/catalog"), Map.entry("shop", "own"));
        assertThatThrownBy(() -> change(records -> records.settings().put("", "x")))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void theRecordOfCompletionGrowsAndKeepsItsFormerStates() {
        signed();
        var first = Samples.completion("");
        var second = Samples.completion("P-1188");
        for (var state : List.of(first, first, second)) {
            change(records -> records.completionRecords().put("Q-2026-0001", 1, state));
        }
        assertThat(seen().completionRecords().latest("Q-2026-0001", 1)).contains(second);
        assertThat(seen().completionRecords().history("Q-2026-0001", 1)).containsExactly(first, second);
        assertThat(seen().completionRecords().latest("Q-2026-0001", 2)).isEmpty();
        assertThatThrownBy(() -> change(records -> records.completionRecords().put("Q-2026-0001", 2, first)))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("a revision that is signed and stored");
    }
}
