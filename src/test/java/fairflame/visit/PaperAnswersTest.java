package fairflame.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import fairflame.document.returned.Answers;
import fairflame.screen.Samples;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Nothing is read into an empty field, and nothing that contradicts itself is taken. Quote of June 3 to July 3. */
class PaperAnswersTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);

    private static Map<String, String> with(String field, String value) {
        var fields = new LinkedHashMap<>(PaperHand.taking("both", "one"));
        fields.put(field, value);
        return fields;
    }

    private static PaperAnswers read(Map<String, String> fields, LocalDate today) {
        return PaperAnswers.read(new Answers(fields), Samples.quote(), today);
    }

    @Test
    void aWholeAnswerIsRead() {
        var said = read(PaperHand.taking("one", "both"), TODAY);
        assertThat(said.choice()).contains("one");
        assertThat(said.name()).isEqualTo("Marguerite Oduya");
        assertThat(said.role()).isEqualTo("owner");
        assertThat(said.dated()).isEqualTo(LocalDate.of(2026, 6, 12));
    }

    @Test
    void theDayOfTheQuoteAndTodayAreTaken() {
        assertThat(read(with("date", "2026-06-03"), TODAY).dated()).isEqualTo(LocalDate.of(2026, 6, 3));
        assertThat(read(with("date", "2026-06-15"), TODAY).dated()).isEqualTo(TODAY);
    }

    @Test
    void noneOfTheseNeedsAWordOnEachChoice() {
        var fields = with("choice", "none");
        fields.remove("order-both");
        fields.remove("electronic");
        assertThatThrownBy(() -> read(fields, TODAY)).hasMessageContaining("field 'decline-both'");
        fields.put("decline-both", "Yes");
        assertThat(read(fields, TODAY).choice()).isEmpty();
    }

    static Stream<Arguments> halves() {
        return Stream.of(
                Arguments.of("choice", "", "field 'choice'"),
                Arguments.of("choice", "take-three", "take-both, take-one, none"),
                Arguments.of("order-both", "", "field 'order-both'"),
                Arguments.of("decline-one", "", "field 'decline-one'"),
                Arguments.of("electronic", "", "field 'electronic'"),
                Arguments.of("role", "", "field 'role'"),
                Arguments.of("name", "", "field 'name'"),
                Arguments.of("name", "   ", "field 'name'"),
                Arguments.of("signature", "", "field 'signature'"),
                Arguments.of("date", "", "field 'date'"),
                Arguments.of("date", "June 12", "year-month-day"),
                Arguments.of("date", "2026-06-31", "year-month-day"),
                Arguments.of("date", "2026-06-02", "2026-06-03, the day of the quote"),
                Arguments.of("date", "2026-06-16", "to 2026-06-15, today"),
                Arguments.of("order-one", "Yes", "a second choice"),
                Arguments.of("decline-both", "Yes", "taken and declined"));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("halves")
    void whatIsNotWholeIsRefusedByItsField(String field, String value, String named) {
        assertThatThrownBy(() -> read(with(field, value), TODAY))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("field '" + field + "' of the returned paper")
                .hasMessageContaining(named);
    }

    @Test
    void aDateAfterTheLastDayOfTheQuoteIsRefused() {
        assertThatThrownBy(() -> read(with("date", "2026-07-04"), LocalDate.of(2026, 7, 10)))
                .hasMessageContaining("2026-07-03, its last day");
    }
}
