package fairflame.screen.file;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.Refusal;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FormTest {
    private final Form form = new Form();

    @Test
    void whatCannotBeReadStandsBesideItsFieldAndNothingIsDone() {
        form.with("amount", "much");
        var done = new boolean[1];
        assertThat(form.submit(() -> {
                    form.money("amount", CurrencyUnit.USD);
                    done[0] = true;
                }))
                .isFalse();
        assertThat(done[0]).isFalse();
        assertThat(form.problem("amount").get().key()).isEqualTo("form.money");
        assertThat(form.problem(Form.WHOLE).get().isNone()).isTrue();
    }

    @Test
    void aRefusalStandsBesideTheFieldItNamesElseUnderTheWhole() {
        form.beside("day of the work", "day");
        form.submit(() -> {
            throw Refusal.outOfRange("day of the work", "2026-06-05", "after 2026-06-06");
        });
        assertThat(form.problem("day").get()).isEqualTo(new Problem("", "after 2026-06-06"));
        form.submit(() -> {
            throw Refusal.missing("invoice", "one");
        });
        assertThat(form.problem("day").get().isNone()).isTrue();
        assertThat(form.problem(Form.WHOLE).get().allowed()).contains("invoice", "one");
    }

    @Test
    void anActThatIsAcceptedLeavesNoProblem() {
        form.submit(() -> form.words("name"));
        assertThat(form.problem("name").get().isNone()).isFalse();
        form.with("name", "Ned");
        assertThat(form.submit(() -> form.words("name"))).isTrue();
        assertThat(form.problem("name").get().isNone()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234.50", "1234.50", "1234.5"})
    void anAmountIsReadWithAndWithoutCommas(String text) {
        assertThat(form.with("amount", text).money("amount", CurrencyUnit.USD)).isEqualTo(Money.parse("USD 1234.50"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-1", "1.234", "1e3", "12,34.00", "0x10", " 1 2"})
    void whatIsNoAmountIsRefused(String text) {
        form.with("amount", text);
        assertThat(form.submit(() -> form.money("amount", CurrencyUnit.USD))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-02-30", "5/6/2026", "today", ""})
    void whatIsNoDayIsRefused(String text) {
        form.with("day", text);
        assertThat(form.submit(() -> form.day("day"))).isFalse();
        assertThat(form.problem("day").get().key()).isEqualTo("form.day");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.75", "1,75"})
    void aQuantityIsReadWithPointOrComma(String text) {
        assertThat(form.with("hours", text).number("hours")).isEqualByComparingTo("1.75");
    }
}
