package fairflame.screen.office;

import fairflame.Refusal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What was typed into a field, and why it was refused; typing on takes the refusal away. */
public final class Typed {
    private final StringProperty value;
    private final StringProperty refusal = new SimpleStringProperty("");

    public Typed(String first) {
        value = new SimpleStringProperty(first);
        value.addListener((property, before, now) -> refusal.set(""));
    }

    public StringProperty value() {
        return value;
    }

    /** Why the last try was refused; empty for none. */
    public StringProperty refusal() {
        return refusal;
    }

    public String text() {
        return value.get().strip();
    }

    /** A day; the field says what is allowed when it is none. */
    public Optional<LocalDate> day(String what) {
        return read(() -> {
            try {
                return LocalDate.parse(text());
            } catch (DateTimeParseException e) {
                throw Refusal.malformed(what, text(), "year-month-day, such as 2026-06-03");
            }
        });
    }

    /** A file or folder; the field says what is allowed when nothing, or no place, was typed. */
    public Optional<Path> path(String what) {
        return read(() -> {
            if (text().isEmpty()) {
                throw Refusal.missing(what, "the place of a file or folder");
            }
            try {
                return Path.of(text());
            } catch (InvalidPathException e) {
                throw Refusal.malformed(what, text(), "the place of a file or folder");
            }
        });
    }

    /** Words; the field says so when there are none. */
    public Optional<String> words(String what, String allowed) {
        return read(() -> {
            if (text().isEmpty()) {
                throw Refusal.missing(what, allowed);
            }
            return text();
        });
    }

    private <T> Optional<T> read(Supplier<T> reading) {
        try {
            var read = Optional.of(reading.get());
            refusal.set("");
            return read;
        } catch (Refusal refused) {
            refusal.set(refused.getMessage());
            return Optional.empty();
        }
    }
}
