package fairflame.invoice.permit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.agreement.CancelRight;
import fairflame.agreement.DemoAgreements;
import fairflame.agreement.SignedRevision;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BookingTest {
    private static final SignedRevision SIGNED = DemoAgreements.BOTH;
    private static final LocalDate LAST = CancelRight.of(SIGNED).orElseThrow().lastDay();
    private static final Waiver WAIVER =
            new Waiver("Q-2026-0001", 1, LAST.minusDays(1), "The pool heater is out and I cannot wait three days.");

    @Test
    void noWorkIsBookedWhileTheCustomerMayCancel() {
        assertThatThrownBy(() -> Booking.of(SIGNED, LAST, "Ned", Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("after " + LAST);
        assertThat(Booking.of(SIGNED, LAST.plusDays(1), "Ned", Optional.empty()).day())
                .isEqualTo(LAST.plusDays(1));
    }

    @Test
    void theCustomersOwnWaiverLetsTheWorkBegin() {
        assertThat(Booking.of(SIGNED, LAST, "Ned", Optional.of(WAIVER)).day()).isEqualTo(LAST);
    }

    @Test
    void aWaiverInAFewWordsIsNone() {
        assertThatThrownBy(() -> new Waiver("Q-2026-0001", 1, LAST, "ok"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("own words");
    }

    @Test
    void workBeforeTheSignatureIsRefused() {
        var before = SIGNED.signature().at().toLocalDate().minusDays(1);
        assertThatThrownBy(() -> Booking.of(SIGNED, before, "Ned", Optional.of(WAIVER)))
                .isInstanceOf(Refusal.class);
    }
}
