package fairflame.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PercentTest {
    @Test
    void keepsItsDigitsExactly() {
        assertThat(Percent.parse("7.25").factor()).isEqualByComparingTo("0.0725");
        assertThat(Percent.parse(" 7.250 % ")).isEqualTo(Percent.parse("7.25"));
        assertThat(Percent.parse("6").plus(Percent.parse("1.25"))).isEqualTo(Percent.parse("7.25"));
        assertThat(Percent.parse("100")).hasToString("100 %");
        assertThat(Percent.parse("0.00")).isEqualTo(Percent.ZERO);
        assertThat(new Percent(BigDecimal.ZERO.setScale(4))).isEqualTo(Percent.ZERO);
    }

    @Test
    void reachesFromMinusAHundredToTenThousand() {
        assertThat(Percent.parse("-100").factor()).isEqualByComparingTo("-1");
        assertThat(Percent.parse("10000").factor()).isEqualByComparingTo("100");
        assertThatThrownBy(() -> Percent.parse("-100.01")).isInstanceOf(Refusal.OutOfRange.class);
        assertThatThrownBy(() -> Percent.parse("10000.01"))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("10000.01 %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "%", "seven", "7,25", "7.1234567", "1e2", "7 25"})
    void refusesTextThatIsNoPercentage(String text) {
        assertThatThrownBy(() -> Percent.parse(text)).isInstanceOf(Refusal.Malformed.class);
    }
}
