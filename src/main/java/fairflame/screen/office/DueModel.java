package fairflame.screen.office;

import fairflame.invoice.permit.Due;
import fairflame.screen.kit.Ended;
import fairflame.screen.kit.LongWork;
import fairflame.visit.DueVisits;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What has to happen, by day, without a window. */
public final class DueModel {
    /** Days that count as soon, today among them. */
    private static final int SOON_DAYS = 7;

    private final OfficeWork work;
    private final LongWork runner;
    private final LocalDate today;
    private final List<DueVisits.Row> all;
    private final ObjectProperty<Optional<Due.Kind>> kind = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty written = new SimpleStringProperty("");
    private final StringProperty refusal = new SimpleStringProperty("");

    public DueModel(OfficeWork work, LongWork runner) {
        this.work = work;
        this.runner = runner;
        this.today = work.today();
        this.all = work.due();
    }

    /** How near it is. */
    public enum When {
        LATE,
        SOON,
        LATER
    }

    public LocalDate today() {
        return today;
    }

    /** The only kind that is shown; all for none. */
    public ObjectProperty<Optional<Due.Kind>> kind() {
        return kind;
    }

    /** Kinds that are due, in their order. */
    public List<Due.Kind> kinds() {
        return all.stream().map(row -> row.due().kind()).distinct().sorted().toList();
    }

    /** Place of the calendar file; empty until it is written. */
    public StringProperty written() {
        return written;
    }

    public StringProperty refusal() {
        return refusal;
    }

    /** What is due of the chosen kind, by how near it is; no entry where nothing is. */
    public Map<When, List<DueVisits.Row>> groups() {
        var groups = new EnumMap<When, List<DueVisits.Row>>(When.class);
        for (var when : When.values()) {
            var rows = all.stream()
                    .filter(row -> when(row.due().day()) == when)
                    .filter(row -> kind.get().map(row.due().kind()::equals).orElse(true))
                    .toList();
            if (!rows.isEmpty()) {
                groups.put(when, rows);
            }
        }
        return groups;
    }

    private When when(LocalDate day) {
        if (day.isBefore(today)) {
            return When.LATE;
        }
        return day.isBefore(today.plusDays(SOON_DAYS)) ? When.SOON : When.LATER;
    }

    /** Writes the calendar file. */
    public void calendar() {
        refusal.set("");
        runner.run("calendar", progress -> work.calendar().toString(), written::set, Ended.in(refusal));
    }
}
