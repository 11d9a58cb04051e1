package fairflame.document;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.component.VEvent;
import fairflame.invoice.permit.Due;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Read back with biweekly 0.6.8, which had no part in writing. */
class CalendarFileTest {
    private static final Instant MADE = Instant.parse("2026-03-02T08:15:30Z");
    private static final String LONG = "Gas line, \u00BE in; back\\slash \u2013 gepr\u00FCft \uD83D\uDD25 "
            .repeat(6)
            .strip();
    private static final List<Due> LIST = List.of(
            new Due("inspection-Q-2026-0001", Due.Kind.INSPECTION, LocalDate.of(2026, 3, 20), "Inspection", LONG),
            new Due("invoice-I-2026-0007", Due.Kind.INVOICE_DUE, LocalDate.of(2026, 12, 31), "Due; 58.49 open", ""));

    private static List<VEvent> events(String file) {
        return Biweekly.parse(file).first().getEvents();
    }

    @Test
    void everyDueThingIsAWholeDayThatAnotherReaderFinds() {
        var file = CalendarFile.write(LIST, "sandpiper.example", MADE);
        var events = events(file);
        assertThat(events).hasSize(2);
        assertThat(events.get(0).getUid().getValue()).isEqualTo("inspection-Q-2026-0001@sandpiper.example");
        assertThat(events.get(0).getDescription().getValue()).isEqualTo(LONG);
        assertThat(events.get(1).getSummary().getValue()).isEqualTo("Due; 58.49 open");
        var start = events.get(1).getDateStart().getValue();
        assertThat(start.hasTime()).isFalse();
        assertThat(start.toInstant().atZone(ZoneId.systemDefault()).toLocalDate())
                .isEqualTo("2026-12-31");
        assertThat(events.get(1)
                        .getDateEnd()
                        .getValue()
                        .toInstant()
                        .atZone(ZoneId.systemDefault())
                        .toLocalDate())
                .isEqualTo("2027-01-01");
        assertThat(events.get(0).getAlarms()).hasSize(1);
    }

    @Test
    void theReaderFindsNothingToWarnAbout() {
        var calendar = Biweekly.parse(CalendarFile.write(LIST, "sandpiper.example", MADE))
                .first();
        assertThat(calendar.validate(ICalVersion.V2_0).toString()).isEmpty();
    }

    @Test
    void noLineIsLongerThan75OctetsAndAllEndInCarriageReturnAndLineFeed() {
        var file = CalendarFile.write(LIST, "sandpiper.example", MADE);
        assertThat(file).endsWith("END:VCALENDAR\r\n");
        assertThat(file.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        assertThat(file.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
    }
}
