package fairflame.screen.file;

import fairflame.Refusal;
import fairflame.money.Amounts;
import fairflame.screen.kit.Ended;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Fields as they are typed, without a window. What is refused stands beside its field; what belongs to no field stands
 * under the empty name.
 */
public final class Form {
    /** Name of what belongs to no field. */
    public static final String WHOLE = "";

    private final Map<String, StringProperty> values = new LinkedHashMap<>();
    private final Map<String, ObjectProperty<Problem>> problems = new LinkedHashMap<>();
    private final Map<String, String> places = new LinkedHashMap<>();

    /** What is typed in a field. */
    public StringProperty value(String field) {
        return values.computeIfAbsent(field, name -> new SimpleStringProperty(""));
    }

    /** The form with a field filled in. */
    public Form with(String field, String text) {
        value(field).set(text);
        return this;
    }

    /** What is wrong with a field. */
    public ReadOnlyObjectProperty<Problem> problem(String field) {
        return held(field);
    }

    private ObjectProperty<Problem> held(String field) {
        return problems.computeIfAbsent(field, name -> new SimpleObjectProperty<>(Problem.NONE));
    }

    /** A refusal of something that begins with these words stands beside this field. */
    public Form beside(String what, String field) {
        places.put(what, field);
        return this;
    }

    /** Does the act; when something is refused, nothing is done and the reason stands beside its field. */
    public boolean submit(Runnable act) {
        return read(() -> {
                    act.run();
                    return true;
                })
                .isPresent();
    }

    /** What is typed, as an act takes it; empty, the reason beside its field, when it cannot be read. */
    <T> Optional<T> read(Supplier<T> typed) {
        problems.values().forEach(problem -> problem.set(Problem.NONE));
        try {
            return Optional.of(typed.get());
        } catch (Unreadable unreadable) {
            held(unreadable.field).set(unreadable.problem);
        } catch (Refusal refusal) {
            refuse(refusal);
        }
        return Optional.empty();
    }

    /** Tells why an act came to nothing: beside the field that was refused, else above the key. */
    void tell(Ended ended) {
        ended.refusal().ifPresentOrElse(this::refuse, () -> held(WHOLE).set(new Problem("", ended.words())));
    }

    private void refuse(Refusal refusal) {
        var field = places.entrySet().stream()
                .filter(place -> refusal.what().startsWith(place.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
        held(field.orElse(WHOLE))
                .set(new Problem("", field.isPresent() ? refusal.allowed() : String.valueOf(refusal.getMessage())));
    }

    public String text(String field) {
        return value(field).get().strip();
    }

    public boolean isBlank(String field) {
        return text(field).isEmpty();
    }

    /** Words that have to be given. */
    public String words(String field) {
        if (isBlank(field)) {
            throw new Unreadable(field, new Problem("form.words", ""));
        }
        return text(field);
    }

    /** A quantity of zero or more with up to four decimals. */
    public BigDecimal number(String field) {
        if (!text(field).matches("\\d{1,6}([.,]\\d{1,4})?")) {
            throw new Unreadable(field, new Problem("form.number", ""));
        }
        return new BigDecimal(text(field).replace(',', '.'));
    }

    /** A whole number of one to five digits. */
    public int whole(String field) {
        if (!text(field).matches("\\d{1,5}")) {
            throw new Unreadable(field, new Problem("form.whole", ""));
        }
        return Integer.parseInt(text(field));
    }

    public Money money(String field, CurrencyUnit currency) {
        if (!text(field).matches("\\d{1,3}(,?\\d{3}){0,2}(\\.\\d{1,2})?")) {
            throw new Unreadable(field, new Problem("form.money", ""));
        }
        return Amounts.parse(currency, text(field).replace(",", ""));
    }

    /** A day written 2026-03-20. */
    public LocalDate day(String field) {
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException e) {
            throw new Unreadable(field, new Problem("form.day", ""));
        }
    }

    /** A day, or none for a blank field. */
    public Optional<LocalDate> dayIfAny(String field) {
        return isBlank(field) ? Optional.empty() : Optional.of(day(field));
    }

    /** Ends an act because a field cannot be read. */
    private static final class Unreadable extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final transient Problem problem;
        private final String field;

        Unreadable(String field, Problem problem) {
            super(field, null, false, false);
            this.field = field;
            this.problem = problem;
        }
    }
}
