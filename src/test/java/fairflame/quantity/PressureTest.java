package fairflame.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressureTest {
    /** Rounded half up by hand; what is too low never reads like what is needed. */
    @ParameterizedTest(name = "{0} beside {1}")
    @CsvSource({
        "9.34, 6.0, 9.3",
        "5.84, 6.0, 5.8",
        "5.954, 6.0, 5.95",
        "5.996, 6.0, 5.996",
        "5.9999, 6.0, 6.000",
        "6.0, 6.0, 6.0",
        "6.04, 6.0, 6.0",
        "6.02, 6.04, 6.02"
    })
    void aPressureThatIsTooLowIsNotPrintedAsIfItWereEnough(double gets, double needs, String printed) {
        assertThat(Pressure.ofInchesWater(gets)
                        .inchesBeside(Pressure.ofInchesWater(needs))
                        .toPlainString())
                .isEqualTo(printed);
    }
}
