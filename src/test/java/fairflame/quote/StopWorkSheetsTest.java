package fairflame.quote;

import static fairflame.quote.DemoQuotes.CAUTIONS;
import static fairflame.quote.DemoQuotes.PEOPLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.diagnosis.Finding;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StopWorkSheetsTest {
    private static final StopWorkSheets.Visit VISIT =
            new StopWorkSheets.Visit("V-4", OffsetDateTime.parse("2026-11-20T09:30:00-05:00"), "gas pool heater");

    private static StopWorkSheet sheet(Finding.StopWork finding, String... done) {
        return StopWorkSheets.of(finding, CAUTIONS, PEOPLE, VISIT, List.of(done));
    }

    private static Finding.StopWork danger(String gate, List<String> advice) {
        return new Finding.StopWork(
                List.of(new Finding.Danger(gate, "Smell of gas", "alarm near the union", advice, "S-GASEM")),
                List.of(),
                List.of());
    }

    @Test
    void theSmellOfGasTellsPeopleToLeaveAndHowToCall() {
        var sheet = sheet(DemoQuotes.STOP, "Gas shut at the heater.", "Tag hung.");
        assertThat(sheet.headline()).startsWith("STOP").contains("Smell of gas");
        assertThat(sheet.dangers()).singleElement().satisfies(danger -> {
            assertThat(danger.found()).isEqualTo("detector alarm near the union");
            assertThat(String.join(" ", danger.advice()))
                    .contains("Leave")
                    .contains("phones")
                    .contains("emergency number");
        });
        assertThat(sheet.receipt()).contains("orders no work");
        assertThat(sheet.done()).hasSize(2);
        assertThat(sheet.at()).isEqualTo(VISIT.at());
    }

    @Test
    void everyGateHasAdvice() {
        IntStream.rangeClosed(1, 9)
                .forEach(gate -> assertThat(sheet(danger("G" + gate, List.of()))
                                .dangers()
                                .get(0)
                                .advice())
                        .as("G%d", gate)
                        .isNotEmpty());
        assertThatThrownBy(() -> sheet(danger("G77", List.of())))
                .isInstanceOf(Refusal.Missing.class)
                .hasMessageContaining("G77");
    }

    @Test
    void adviceOfTheFindingStandsForItself() {
        assertThat(sheet(danger("G1", List.of("Go away."))).dangers().get(0).advice())
                .containsExactly("Go away.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Fee $89 due.", "Charge USD 89", "costs 89.00 dollars", "pay \u20ac 5"})
    void noAmountOfMoneyStandsOnIt(String sentence) {
        assertThatThrownBy(() -> sheet(DemoQuotes.STOP, sentence)).isInstanceOf(Refusal.StopWork.class);
        assertThatThrownBy(() -> sheet(danger("G1", List.of(sentence)))).isInstanceOf(Refusal.StopWork.class);
    }

    @Test
    void figuresOfReadingsMayStandOnIt() {
        assertThat(sheet(DemoQuotes.STOP, "Detector at 12.50 % of the lower limit.")
                        .done())
                .hasSize(1);
    }

    @Test
    void theWordsHaveToBeWhole() {
        var broken = DemoQuotes.template("cautions.yaml").replace("{danger}", "{fire}");
        assertThatThrownBy(() -> Cautions.parse(broken))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageStartingWith("cautions.yaml");
        var reasonless = DemoQuotes.template("cautions.yaml").replace("{reason}", "{why}");
        assertThatThrownBy(() -> Cautions.parse(reasonless))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("{why}");
        assertThatThrownBy(() -> new Cautions.StopWork("x", " ", List.of("a"), List.of()))
                .isInstanceOf(Refusal.Missing.class);
        assertThatThrownBy(() -> new Cautions.StopWork("x", "y", List.of(), List.of()))
                .isInstanceOf(Refusal.Missing.class);
    }
}
