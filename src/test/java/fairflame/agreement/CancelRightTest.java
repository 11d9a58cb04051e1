package fairflame.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.quote.DemoQuotes;
import fairflame.quote.DemoScopes;
import fairflame.quote.DemoShop;
import fairflame.quote.PricingInputs;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CancelRightTest {
    // 16 CFR 429.0 and 429.1: midnight of the third business day; Saturday is one, Sundays and federal holidays are
    // not.
    @ParameterizedTest(name = "signed {0}, {1} days: {2}")
    @CsvSource(textBlock = """
        # Thursday: Friday, Saturday, Monday
        2026-11-05, 3, 2026-11-09
        # Friday: Saturday, Monday, Tuesday
        2026-10-16, 3, 2026-10-20
        # Thursday before Columbus Day (12 October): Friday, Saturday, Tuesday
        2026-10-08, 3, 2026-10-13
        # Wednesday before Thanksgiving (26 November): Friday, Saturday, Monday
        2026-11-25, 3, 2026-11-30
        # Saturday: Monday, Tuesday, Wednesday (11 November) is Veterans Day, Thursday
        2026-11-07, 3, 2026-11-12
        # Wednesday 1 July: Thursday; Friday 3 and Saturday 4 are Independence Day; Monday, Tuesday
        2026-07-01, 3, 2026-07-07
        # Thursday 30 December 2021: Friday 31 is kept for New Year's Day on a Saturday; Monday, Tuesday, Wednesday
        2021-12-30, 3, 2022-01-05
        # five business days, as in Alaska
        2026-10-16, 5, 2026-10-22
        2026-11-05, 1, 2026-11-06
        """)
    void theLastDayIsCountedInBusinessDays(LocalDate signed, int days, LocalDate last) {
        assertThat(CancelRight.lastDay(signed, days)).isEqualTo(last);
    }

    // Published list of federal holidays 2023 (Office of Personnel Management, as repeated at j4neiros.us), with the
    // days
    // on which they are kept, and the days themselves where these differ.
    @Test
    void theHolidaysOf2023() {
        assertThat(FederalHolidays.of(2023))
                .containsExactlyElementsOf(days(
                        "2023-01-01",
                        "2023-01-02",
                        "2023-01-16",
                        "2023-02-20",
                        "2023-05-29",
                        "2023-06-19",
                        "2023-07-04",
                        "2023-09-04",
                        "2023-10-09",
                        "2023-11-10",
                        "2023-11-11",
                        "2023-11-23",
                        "2023-12-25"));
    }

    // A public office's list for 2026 (poplarcsd.org, rates and holidays), less the days that are not federal.
    @Test
    void theHolidaysOf2026() {
        assertThat(FederalHolidays.of(2026))
                .containsExactlyElementsOf(days(
                        "2026-01-01",
                        "2026-01-19",
                        "2026-02-16",
                        "2026-05-25",
                        "2026-06-19",
                        "2026-07-03",
                        "2026-07-04",
                        "2026-09-07",
                        "2026-10-12",
                        "2026-11-11",
                        "2026-11-26",
                        "2026-12-25"));
    }

    private static List<LocalDate> days(String... days) {
        return java.util.Arrays.stream(days).map(LocalDate::parse).toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, 61})
    void aRightHasASensibleLength(int days) {
        assertThatThrownBy(() -> CancelRight.lastDay(LocalDate.EPOCH, days)).isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void thePlaceDecidesWhetherThereIsARight() {
        // Signed on Friday 20 November 2026: Saturday, Monday, Tuesday.
        assertThat(CancelRight.of(DemoAgreements.BOTH))
                .contains(new CancelRight(LocalDate.of(2026, 11, 20), 3, LocalDate.of(2026, 11, 24)));
        var near = PricingInputs.inZone("near");
        assertThat(CancelRight.of(upperLake(near))).isEmpty();
        var further = new PricingInputs(
                "near", Set.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), Set.of("clean"));
        assertThat(CancelRight.of(upperLake(further)).orElseThrow().businessDays())
                .isEqualTo(5);
    }

    private static SignedRevision upperLake(PricingInputs inputs) {
        var quote = DemoQuotes.quoting(DemoQuotes.request(DemoShop.STRICT, inputs))
                .repair(DemoQuotes.SETTLED, DemoQuotes.plan(DemoScopes.CLEAN_SENSOR));
        return DemoAgreements.sign(quote, "clean", Map.of());
    }
}
