package fairflame.invoice.permit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PermitTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Permit NEEDED = Permit.needed("Q-2026-0001", 1, "Larkwell", DAY);

    private static PermitStep step(PermitState to, int day) {
        var needsDay = to == PermitState.BOOKED;
        return new PermitStep(
                DAY.plusDays(day),
                to,
                "Ida Quill",
                to == PermitState.ISSUED ? "GP-26-0417" : "",
                needsDay ? Optional.of(DAY.plusDays(day + 3)) : Optional.empty(),
                "told by the counter");
    }

    @Test
    void goesFromNeededToPassedOverAFailedInspection() {
        var permit = NEEDED.after(step(PermitState.APPLIED, 1))
                .after(step(PermitState.ISSUED, 4))
                .after(step(PermitState.BOOKED, 5))
                .after(step(PermitState.FAILED, 8))
                .after(step(PermitState.BOOKED, 9))
                .after(step(PermitState.PASSED, 12));
        assertThat(permit.state()).isEqualTo(PermitState.PASSED);
        assertThat(permit.number()).isEqualTo("GP-26-0417");
        assertThat(permit.forCompletion()).isEqualTo("GP-26-0417");
        assertThat(permit.inspection()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"ISSUED", "BOOKED", "PASSED", "FAILED"})
    void aNeededPermitCannotSkipItsApplication(PermitState to) {
        assertThatThrownBy(() -> NEEDED.after(step(to, 1)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("applied, not-needed");
    }

    @Test
    void nothingFollowsASettledPermit() {
        var told = NEEDED.after(step(PermitState.NOT_NEEDED, 1));
        assertThat(told.forCompletion()).isEqualTo("not required: told by the counter, 2026-03-03");
        assertThatThrownBy(() -> told.after(step(PermitState.APPLIED, 2)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("nothing, it is settled");
    }

    @Test
    void anInspectionAfterTheLastDayOfThePermitIsRefused() {
        var issued = NEEDED.after(step(PermitState.APPLIED, 0))
                .after(new PermitStep(DAY, PermitState.ISSUED, "Ida", "GP-1", Optional.of(DAY.plusDays(10)), ""));
        var late = new PermitStep(DAY, PermitState.BOOKED, "Ida", "", Optional.of(DAY.plusDays(11)), "");
        assertThatThrownBy(() -> issued.after(late))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("not after 2026-03-12");
        var past = new PermitStep(DAY.plusDays(2), PermitState.BOOKED, "Ida", "", Optional.of(DAY), "");
        assertThatThrownBy(() -> issued.after(past)).isInstanceOf(Refusal.class);
    }

    @Test
    void aStepBeforeTheOneBeforeIsRefused() {
        var applied = NEEDED.after(step(PermitState.APPLIED, 5));
        assertThatThrownBy(() -> applied.after(step(PermitState.ISSUED, 4)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("2026-03-07 or later");
    }

    @ParameterizedTest
    @CsvSource({"ISSUED,''", "BOOKED,''", "FAILED,''", "NOT_NEEDED,''"})
    void aStepWithoutWhatItTellsIsRefused(PermitState to, String words) {
        assertThatThrownBy(() -> new PermitStep(DAY, to, "Ida", "", Optional.empty(), words))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void everyReachablePermitHasANumberOnceIssuedWhateverTheSteps() {
        var seed = 20260320L;
        var dice = new Random(seed);
        var met = EnumSet.noneOf(PermitState.class);
        for (int round = 0; round < 500; round++) {
            var permit = NEEDED;
            for (int i = 0; i < 12 && !permit.state().settled(); i++) {
                var next = PermitState.values()[1 + dice.nextInt(PermitState.values().length - 1)];
                if (permit.state().next().contains(next)) {
                    permit = permit.after(step(next, i));
                } else {
                    var stuck = permit;
                    var day = i;
                    assertThatThrownBy(() -> stuck.after(step(next, day))).isInstanceOf(Refusal.class);
                }
                met.add(permit.state());
            }
            var early = EnumSet.of(PermitState.NEEDED, PermitState.APPLIED, PermitState.NOT_NEEDED);
            assertThat(permit.number().isEmpty())
                    .as("seed %d round %d", seed, round)
                    .isEqualTo(early.contains(permit.state()));
        }
        assertThat(met).contains(PermitState.PASSED, PermitState.FAILED, PermitState.NOT_NEEDED);
    }

    @Test
    void everyStateIsReadBackFromItsWord() {
        for (var state : PermitState.values()) {
            assertThat(PermitState.parse(state.word())).isEqualTo(state);
        }
        assertThatThrownBy(() -> PermitState.parse("lost")).isInstanceOf(Refusal.class);
    }
}
