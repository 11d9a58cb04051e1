package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.invoice.actual.ActualEntry;
import fairflame.quote.LineKind;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobActualsTest {
    private static final Library LIBRARY = Library.load(Sources.samples());
    private static final String QUOTE = "Q-2026-0001";

    @TempDir
    private static Path truck;

    @TempDir
    private Path folder;

    private static Path packet;

    private Workplace on(String moment) {
        return Workplace.open(folder, LIBRARY, Clock.fixed(Instant.parse(moment), ZoneOffset.ofHours(-5)), "Ida Quill");
    }

    /** A truck signed the first demo visit on June 3, a Wednesday: it may be cancelled until Saturday, June 6. */
    @BeforeAll
    static void packed() {
        new Demo(truck, line -> {}).run();
        var later = Clock.fixed(Instant.parse("2026-06-20T15:00:00Z"), ZoneOffset.ofHours(-5));
        try (var demo = Workplace.open(truck, LIBRARY, later, "Ida Quill")) {
            new Handoff(demo).name("truck-2", "QB");
            packet = truck.resolve(new Handoff(demo).export());
        }
    }

    private void signed() {
        try (var here = on("2026-06-03T17:00:00Z")) {
            new Handoff(here).take(packet);
        }
    }

    @Test
    void hoursOfATaskToldWithTheWorkStandBesideItsStandardTime() {
        signed();
        try (var here = on("2026-06-09T17:00:00Z")) {
            var labour = new JobActuals(here)
                    .of(QUOTE).work().rows().stream()
                            .map(row -> row.line())
                            .filter(line -> line.kind() == LineKind.LABOUR)
                            .findFirst()
                            .orElseThrow()
                            .id();
            var told = new ActualEntry(
                    Map.of(labour, new BigDecimal("1.75")),
                    List.of(),
                    Set.of(),
                    Set.of(),
                    Map.of("R03", new BigDecimal("0.80")),
                    "");
            new JobActuals(here).enter(QUOTE, told);
            assertThat(new JobHours(here).comparisons()).singleElement().satisfies(comparison -> {
                assertThat(comparison.task()).isEqualTo("R03");
                assertThat(comparison.jobs()).isEqualTo(1);
            });
            assertThat(new JobHours(here).labour()).singleElement().satisfies(job -> {
                assertThat(job.actual()).isEqualByComparingTo("1.75");
                assertThat(job.quote()).isEqualTo(QUOTE);
            });
        }
    }

    @Test
    void whoToldWhatAndWhenIsKept() {
        signed();
        try (var here = on("2026-06-09T17:00:00Z")) {
            var actuals = new JobActuals(here);
            actuals.enter(QUOTE, ActualEntry.of(Map.of("L1", BigDecimal.ONE), ""));
            var view = actuals.enter(QUOTE, ActualEntry.of(Map.of("L1", BigDecimal.TEN), "clock read wrong"));
            assertThat(view.history()).hasSize(2);
            assertThat(view.history().get(0).quantities()).containsEntry("L1", BigDecimal.ONE);
            assertThat(view.latest()).hasValueSatisfying(state -> {
                assertThat(state.by()).isEqualTo("Ida Quill");
                assertThat(state.note()).isEqualTo("clock read wrong");
            });
            assertThat(here.store()
                            .<Object>reading(records -> records.audit().about(QUOTE + " revision 1").stream()
                                    .filter(entry -> entry.what().startsWith("actual work"))
                                    .count()))
                    .isEqualTo(2L);
        }
    }

    @Test
    void repairWorkIsNotBilledWhileItMayBeCancelledUnlessTheCustomerWaived() {
        signed();
        try (var here = on("2026-06-06T17:00:00Z")) {
            var terms = new Billing.Terms(here.today(), 14, false);
            var billing = new Billing(here);
            assertThatThrownBy(() -> billing.invoice(QUOTE, CompletionFile.NOTHING, terms))
                    .isInstanceOf(Refusal.NotAllowed.class)
                    .hasMessageContaining("after 2026-06-06");
            assertThatThrownBy(() -> new Conversion(here).part(QUOTE, Map.of("L1", BigDecimal.ONE), terms))
                    .isInstanceOf(Refusal.NotAllowed.class)
                    .hasMessageContaining("after 2026-06-06");
            new Permits(here).waive(QUOTE, here.today(), "Our child is ill and needs the warm pool.");
            assertThat(billing.invoice(QUOTE, CompletionFile.NOTHING, terms)
                            .invoice()
                            .number())
                    .isEqualTo("I-2026-0001");
        }
    }

    @Test
    void theDayAfterTheRightEndsTheWorkMayBeBilledButNotAsDoneInsideIt() {
        signed();
        try (var here = on("2026-06-08T17:00:00Z")) {
            var billing = new Billing(here);
            var inside = new Billing.Terms(LocalDate.of(2026, 6, 5), 14, false);
            assertThatThrownBy(() -> billing.invoice(QUOTE, CompletionFile.NOTHING, inside))
                    .isInstanceOf(Refusal.NotAllowed.class);
            var after = new Billing.Terms(LocalDate.of(2026, 6, 8), 14, false);
            assertThat(billing.invoice(QUOTE, CompletionFile.NOTHING, after)
                            .invoice()
                            .number())
                    .isEqualTo("I-2026-0001");
        }
    }
}
