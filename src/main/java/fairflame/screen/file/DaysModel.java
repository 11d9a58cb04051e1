package fairflame.screen.file;

import java.time.LocalDate;

/** The day of the work, and the customer's own waiver of the right to cancel. */
public final class DaysModel {
    private final FileModel file;
    private final Form booking = new Form();
    private final Form waiver = new Form();

    public DaysModel(FileModel file) {
        this.file = file;
        booking.beside("day of the work", "book-day").beside("who does the work", "book-crew");
        waiver.beside("statement of the buyer", "waiver-words");
        var job = file.job();
        booking.with(
                        "book-day",
                        job.booking()
                                .map(known -> known.day().toString())
                                .orElseGet(() -> firstDay().toString()))
                .with("book-crew", job.booking().map(known -> known.crew()).orElse(""));
    }

    /** The first day on which the work may begin. */
    public LocalDate firstDay() {
        var job = file.job();
        var today = file.work().today();
        return job.right()
                .filter(right -> job.waiver().isEmpty() && !today.isAfter(right.lastDay()))
                .map(right -> right.lastDay().plusDays(1))
                .orElse(today);
    }

    /** Whether the customer may still cancel today. */
    public boolean rightRuns() {
        return file.job()
                .right()
                .filter(right -> !file.work().today().isAfter(right.lastDay()))
                .isPresent();
    }

    public Form booking() {
        return booking;
    }

    public Form waiver() {
        return waiver;
    }

    public boolean book() {
        return file.act(
                booking,
                "file.said.booked",
                () -> file.work().book(file.quote(), booking.day("book-day"), booking.words("book-crew")));
    }

    /** Keeps the customer's own words, dated today. */
    public boolean waive() {
        return file.act(
                waiver, "file.said.waived", () -> file.work().waive(file.quote(), waiver.words("waiver-words")));
    }
}
