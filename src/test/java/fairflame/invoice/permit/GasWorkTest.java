package fairflame.invoice.permit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GasWorkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 20);

    private static GasWork work(String licence, LocalDate ends) {
        return new GasWork("Q-2026-0001", 1, DAY, "Ned Garrow", licence, ends, Optional.empty());
    }

    @Test
    void aLicenceHoldsOnItsLastDay() {
        assertThat(work("GF-20417", DAY).licence()).isEqualTo("GF-20417");
    }

    @Test
    void workUnderAnExpiredLicenceIsRefused() {
        assertThatThrownBy(() -> work("GF-20417", DAY.minusDays(1)))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("GF-20417 ended 2026-03-19");
    }

    @Test
    void workWithoutALicenceNumberIsRefused() {
        assertThatThrownBy(() -> work(" ", DAY))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("number of the licence");
    }
}
