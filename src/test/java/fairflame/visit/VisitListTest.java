package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.agreement.SigningAct;
import fairflame.invoice.actual.ActualEntry;
import fairflame.invoice.permit.PermitState;
import fairflame.invoice.permit.PermitStep;
import fairflame.store.Folder;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VisitListTest {
    private static final Library LIBRARY = Library.load(Sources.samples());
    private static final String GAS_LINE = "Q-2026-0001";
    private static final String SIGNED = "2026-06-03T17:00:00Z";
    /** After the right to cancel, which ends on Saturday, June 6. */
    private static final String LATER = "2026-06-09T17:00:00Z";

    @TempDir
    private Path folder;

    private Workplace on(String moment) {
        return Workplace.open(folder, LIBRARY, Clock.fixed(Instant.parse(moment), ZoneOffset.ofHours(-5)), "Ida Quill");
    }

    private static VisitRecord visit(int number) {
        var files = Folder.shipped("fairflame/demo");
        return LIBRARY.visits().read(Objects.requireNonNull(files.get("visit-" + number + ".json")));
    }

    private static void sign(Workplace workplace, int number, String choice) {
        var quote = new Offer(workplace).make(visit(number), List.of()).match(Offer.Quoted::quote, halted -> {
            throw new AssertionError("stopped");
        });
        var agreeing = new Agreeing(workplace);
        agreeing.sign(
                quote.number(),
                choice,
                new SigningAct(
                        "Tobias Renner",
                        "owner",
                        workplace.now(),
                        Set.of(SigningAct.AUTHORISE, SigningAct.ELECTRONIC),
                        agreeing.declines(quote, choice),
                        List.of(),
                        "Ida Quill"));
    }

    private static NextStep next(Workplace workplace) {
        var rows = new VisitList(workplace).all();
        assertThat(rows).hasSize(1);
        return rows.get(0).next();
    }

    private static void step(Workplace workplace, PermitState to, String number, String day) {
        new Permits(workplace)
                .step(
                        GAS_LINE,
                        new PermitStep(
                                workplace.today(),
                                to,
                                "Ida Quill",
                                number,
                                day.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(day)),
                                ""));
    }

    @Test
    void aGasLineGoesFromThePermitToTheClosedFile() {
        try (var here = on(SIGNED)) {
            sign(here, 2, "larger-line");
            assertThat(next(here)).isEqualTo(NextStep.PERMIT);
            step(here, PermitState.APPLIED, "", "");
            assertThat(next(here)).isEqualTo(NextStep.PERMIT);
            step(here, PermitState.ISSUED, "GP-26-0417", "");
            assertThat(next(here)).isEqualTo(NextStep.CANCEL_RUNS);
        }
        try (var here = on(LATER)) {
            assertThat(next(here)).isEqualTo(NextStep.PERMIT_ISSUED);
            new Permits(here).book(GAS_LINE, LocalDate.parse("2026-06-15"), "Ned Garrow");
            assertThat(next(here)).isEqualTo(NextStep.BOOKED);
        }
        try (var here = on("2026-06-15T20:00:00Z")) {
            assertThat(next(here)).isEqualTo(NextStep.INSPECTION);
            step(here, PermitState.BOOKED, "", "2026-06-17");
            assertThat(next(here)).isEqualTo(NextStep.INSPECTION);
            step(here, PermitState.PASSED, "", "");
            assertThat(next(here)).isEqualTo(NextStep.INVOICE);
            bills(here);
        }
    }

    private static void bills(Workplace here) {
        var terms = new Billing.Terms(here.today(), 14, false);
        var first = JobFile.of(here, GAS_LINE).agreed().lines().get(0);
        new Conversion(here).part(GAS_LINE, Map.of(first.id(), BigDecimal.ONE), terms);
        assertThat(next(here)).isEqualTo(NextStep.PART_BILLED);
        var total = JobFile.of(here, GAS_LINE).agreed().totals().total();
        assertThat(new VisitList(here).all().get(0).amount()).contains(total);
        new Billing(here).invoice(GAS_LINE, CompletionFile.NOTHING, terms);
        assertThat(next(here)).isEqualTo(NextStep.PAYMENT);
        var open = JobFile.of(here, GAS_LINE).account().balance();
        assertThat(open).isEqualTo(total);
        new Billing(here).pay("I-2026-0002", new Billing.Received(open, "cash", "", here.today()));
        assertThat(next(here)).isEqualTo(NextStep.NOTHING);
        new Conversion(here).credit("I-2026-0001", Map.of(), "billed in error");
        assertThat(next(here)).isEqualTo(NextStep.REFUND);
    }

    @Test
    void workWithoutPermitIsBookedAsSoonAsTheRightToCancelIsOver() {
        try (var here = on(SIGNED)) {
            sign(here, 1, "both");
            assertThat(next(here)).isEqualTo(NextStep.CANCEL_RUNS);
            new Permits(here).waive(GAS_LINE, here.today(), "Our child is ill and needs the warm pool.");
            assertThat(next(here)).isEqualTo(NextStep.BOOK);
        }
        try (var here = on(LATER)) {
            new JobActuals(here).enter(GAS_LINE, ActualEntry.of(Map.of("L1", BigDecimal.ONE), ""));
            assertThat(next(here)).isEqualTo(NextStep.INVOICE);
            new Billing(here).invoice(GAS_LINE, CompletionFile.NOTHING, new Billing.Terms(here.today(), 0, false));
            assertThat(next(here)).isEqualTo(NextStep.PAYMENT);
        }
        try (var here = on("2026-06-10T17:00:00Z")) {
            assertThat(next(here)).isEqualTo(NextStep.OVERDUE);
        }
    }

    @Test
    void aDiagnosisAloneMayBeBilledAtOnceAndAnOldQuoteIsOutOfDate() {
        try (var here = on(SIGNED)) {
            var quote = new Offer(here).make(visit(1), List.of()).match(Offer.Quoted::quote, halted -> {
                throw new AssertionError("stopped");
            });
            assertThat(next(here)).isEqualTo(NextStep.SIGN);
            assertThat(quote.validUntil()).isBefore(LocalDate.parse("2026-07-20"));
        }
        try (var here = on("2026-07-20T17:00:00Z")) {
            assertThat(next(here)).isEqualTo(NextStep.EXPIRED);
        }
    }

    @Test
    void aSearchFindsCustomerTownHeaterPartNumbersFindingAndPermit() {
        try (var here = on(SIGNED)) {
            sign(here, 2, "larger-line");
            step(here, PermitState.APPLIED, "", "");
            step(here, PermitState.ISSUED, "GP-26-0417", "");
            var list = new VisitList(here);
            var row = list.all().get(0);
            var quote = JobFile.of(here, GAS_LINE).agreed().signed().quote();
            var part = quote.choices().get(0).lines().stream()
                    .filter(line -> !line.item().isEmpty())
                    .findFirst()
                    .orElseThrow()
                    .item();
            for (var word : List.of(
                    quote.customer().name(),
                    quote.place(),
                    quote.heater(),
                    part,
                    quote.finding().headline(),
                    "GP-26-0417",
                    GAS_LINE)) {
                assertThat(row.text()).contains(word.toLowerCase(java.util.Locale.ROOT));
            }
            assertThat(list.all()).as("read once while nothing changes").isSameAs(list.all());
            here.store().change(here.by(), records -> records.settings().put("x", "y"));
            assertThat(list.all()).isNotNull();
            assertThat(list.all().get(0)).as("read again after a change").isNotSameAs(row);
        }
    }

    @Test
    void anOpenConflictComesFirst() {
        try (var here = on(SIGNED)) {
            sign(here, 2, "larger-line");
            here.store()
                    .change(
                            here.by(),
                            records -> records.packets()
                                    .conflict(new fairflame.store.PacketLog.Conflict(
                                            0,
                                            "truck-2",
                                            "quote",
                                            GAS_LINE + " revision 1",
                                            "",
                                            "{}",
                                            "other content under the same name",
                                            Optional.empty())));
            assertThat(next(here)).isEqualTo(NextStep.CONFLICT);
            new Handoff(here).settle(1, "ours is right");
            assertThat(next(here)).isEqualTo(NextStep.PERMIT);
        }
    }
}
