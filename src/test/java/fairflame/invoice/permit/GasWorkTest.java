package fairflame.invoice.permit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.catalog.DepositRule;
import fairflame.catalog.GasTestRule;
import fairflame.catalog.TaxRule;
import fairflame.invoice.PressureTest;
import fairflame.money.Percent;
import fairflame.money.Rounding;
import fairflame.quote.PlaceRules;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasWorkTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 20);
    /** 3 psi, 15 minutes, gauge at most five times the test pressure, witness: a place invented for the demo. */
    private static final PlaceRules RULES = new PlaceRules(
            "larkwell",
            new TaxRule(List.of(), Set.of(), true, false, Rounding.NEAREST, "invented for the demo"),
            new DepositRule(Percent.ZERO, Optional.empty(), Optional.empty(), "invented for the demo"),
            "gas fitter",
            "GF-\\d{5}",
            new GasTestRule(new BigDecimal("3"), 15, new BigDecimal("5"), true, "invented for the demo"),
            3,
            true,
            Percent.ZERO);

    private static GasWork work(PressureTest test) {
        return new GasWork("Q-2026-0001", 1, DAY, "Ned Garrow", "GF-20417", DAY, Optional.of(test));
    }

    @Test
    void aTestThatMeetsThePlaceFallsShortOfNothing() {
        var test = new PressureTest(new BigDecimal("3.0"), 15, new BigDecimal("15"), "air", "A. Moss", true);
        assertThat(work(test).shortfalls(RULES)).isEmpty();
    }

    @ParameterizedTest(name = "{5}")
    @CsvSource({
        "2.9, 15, 15, air, A. Moss, tested at 2.9 psi",
        "3, 14, 15, air, A. Moss, held 14 minutes",
        "3, 15, 15.5, air, A. Moss, at most 15 psi",
        "3, 15, 15, air, '', no witness",
        "3, 15, 15, Oxygen, A. Moss, forbidden"
    })
    void eachShortfallIsTold(String psi, int minutes, String gauge, String medium, String witness, String told) {
        var test = new PressureTest(new BigDecimal(psi), minutes, new BigDecimal(gauge), medium, witness, true);
        assertThat(work(test).shortfalls(RULES)).singleElement().asString().contains(told);
    }

    @Test
    void aTestThatDidNotHoldIsAShortfall() {
        var test = new PressureTest(new BigDecimal("3"), 15, new BigDecimal("15"), "air", "A. Moss", false);
        assertThat(work(test).shortfalls(RULES)).containsExactly("the pressure did not hold");
    }

    @Test
    void workUnderAnExpiredLicenceIsRefused() {
        assertThatThrownBy(() -> new GasWork(
                        "Q-2026-0001", 1, DAY, "Ned Garrow", "GF-20417", DAY.minusDays(1), Optional.empty()))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("GF-20417 ended 2026-03-19");
        assertThatThrownBy(() -> new GasWork("Q-2026-0001", 1, DAY, "Ned", " ", DAY, Optional.empty()))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aLicenceNumberOfAnotherShapeIsAShortfall() {
        var work = new GasWork("Q-2026-0001", 1, DAY, "Ned Garrow", "20417", DAY, Optional.empty());
        assertThat(work.shortfalls(RULES)).singleElement().asString().contains("20417");
    }
}
