package fairflame.document;

import fairflame.invoice.permit.Due;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** What is due as an iCalendar file (RFC 5545): one whole-day event each, with a reminder a day before. */
public final class CalendarFile {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
    /** Octets in a line, line end not counted (RFC 5545, 3.1). */
    private static final int LONGEST = 75;

    private final StringBuilder text = new StringBuilder();

    private CalendarFile() {}

    /**
     * The file.
     *
     * @param domain of the shop, makes the keys unique in the world (RFC 5545, 3.8.4.7)
     * @param made time of making
     */
    public static String write(List<Due> list, String domain, Instant made) {
        var file = new CalendarFile();
        file.line("BEGIN:VCALENDAR").line("VERSION:2.0").line("PRODID:-//Fairflame//Due dates//EN");
        file.line("METHOD:PUBLISH");
        list.forEach(due -> file.event(due, domain, made));
        return file.line("END:VCALENDAR").text.toString();
    }

    private void event(Due due, String domain, Instant made) {
        line("BEGIN:VEVENT");
        line("UID:" + due.key() + "@" + domain);
        line("DTSTAMP:" + STAMP.format(made));
        line("DTSTART;VALUE=DATE:" + DAY.format(due.day()));
        line("DTEND;VALUE=DATE:" + DAY.format(due.day().plusDays(1)));
        line("SUMMARY:" + escaped(due.title()));
        if (!due.details().isBlank()) {
            line("DESCRIPTION:" + escaped(due.details()));
        }
        line("CATEGORIES:" + due.kind().name());
        line("TRANSP:TRANSPARENT");
        line("BEGIN:VALARM").line("ACTION:DISPLAY").line("TRIGGER;RELATED=START:-P1D");
        line("DESCRIPTION:" + escaped(due.title())).line("END:VALARM");
        line("END:VEVENT");
    }

    /** RFC 5545, 3.3.11. */
    private static String escaped(String words) {
        return words.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\\R", "\\\\n")
                .replaceAll("\\p{Cntrl}", "");
    }

    /** Folds at 75 octets, never inside a character. */
    private CalendarFile line(String content) {
        var used = 0;
        for (var i = 0; i < content.length(); ) {
            var point = content.codePointAt(i);
            var size = Character.toString(point).getBytes(StandardCharsets.UTF_8).length;
            if (used + size > LONGEST) {
                text.append("\r\n ");
                used = 1;
            }
            text.appendCodePoint(point);
            used += size;
            i += Character.charCount(point);
        }
        text.append("\r\n");
        return this;
    }
}
