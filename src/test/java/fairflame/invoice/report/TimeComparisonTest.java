package fairflame.invoice.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeComparisonTest {
    private static List<ActualHours> jobs(String standard, String... actual) {
        return Stream.of(actual)
                .map(hours -> new ActualHours(
                        "Q-2026-0001",
                        LocalDate.of(2026, 3, 2),
                        "R03",
                        "",
                        new BigDecimal(standard),
                        new BigDecimal(hours)))
                .toList();
    }

    /** R 4.x, quantile(c(1, 2, 4, 8), type = 7): 25 % 1.75, 50 % 3.00, 75 % 5.00. From memory, checked by hand. */
    @ParameterizedTest
    @CsvSource({"1, 1.75", "2, 3.00", "3, 5.00"})
    void quartilesAreThoseOfDefinitionSeven(int quarter, BigDecimal expected) {
        var sorted = Stream.of("1", "2", "4", "8").map(BigDecimal::new).toList();
        assertThat(TimeComparison.quantile(sorted, quarter)).isEqualByComparingTo(expected);
    }

    @Test
    void suggestsTheMedianRatioOnceThereAreEnoughJobs() {
        var eight = TimeComparison.of(jobs("0.50", "0.60", "0.60", "0.65", "0.65", "0.65", "0.65", "0.70", "0.70"));
        assertThat(eight).singleElement().satisfies(row -> {
            assertThat(row.jobs()).isEqualTo(8);
            assertThat(row.median()).isEqualByComparingTo("0.65");
            assertThat(row.suggestion())
                    .hasValueSatisfying(factor -> assertThat(factor).isEqualByComparingTo("1.30"));
        });
        var seven = TimeComparison.of(jobs("0.50", "0.60", "0.60", "0.65", "0.65", "0.65", "0.65", "0.70"));
        assertThat(seven.get(0).suggestion()).isEmpty();
    }

    @Test
    void aStandardWithinATenthFitsAndNothingIsSuggested() {
        var rows = TimeComparison.of(jobs("1.00", "1.10", "1.10", "1.10", "1.10", "1.10", "1.10", "1.10", "1.10"));
        assertThat(rows.get(0).suggestion()).isEmpty();
        var beyond = TimeComparison.of(jobs("1.00", "1.11", "1.11", "1.11", "1.11", "1.11", "1.11", "1.11", "1.11"));
        assertThat(beyond.get(0).suggestion()).isPresent();
    }

    @Test
    void conditionsAreKeptApart() {
        var tight = new ActualHours(
                "Q-2026-0002", LocalDate.of(2026, 3, 3), "R03", "tight-space", BigDecimal.ONE, BigDecimal.TEN);
        var all = Stream.concat(jobs("1.00", "1.00").stream(), Stream.of(tight)).toList();
        assertThat(TimeComparison.of(all)).extracting(TimeComparison::condition).containsExactly("", "tight-space");
    }

    @Test
    void aJobFarOutsideTheOthersIsShown() {
        var jobs = jobs("1.00", "1.00", "1.05", "1.10", "1.05", "9.00");
        assertThat(TimeComparison.outliers(jobs))
                .singleElement()
                .satisfies(job -> assertThat(job.actual()).isEqualByComparingTo("9.00"));
    }

    @Test
    void refusesHoursOfZeroOrMoreThanAHundred() {
        assertThatThrownBy(() -> jobs("1.00", "0")).isInstanceOf(Refusal.class).hasMessageContaining("R03");
        assertThatThrownBy(() -> jobs("1.00", "100.01")).isInstanceOf(Refusal.class);
    }
}
