package fairflame;

import java.util.Objects;
import java.util.function.Function;

/**
 * Something the program will not accept, told so that the reader can mend it: where it stood, what it was, the value
 * met, what is allowed instead and, if it is not plain, what to do. Always one line.
 *
 * <p>The core says what, value and allowed; the edge that read the input adds {@link #at where}.
 */
public abstract sealed class Refusal extends RuntimeException {
    private final Told told;
    private final Function<Told, Refusal> kind;

    /** @param kind makes another of the same kind */
    private Refusal(Told told, Function<Told, Refusal> kind) {
        super(told.line(), null, false, true);
        this.told = told;
        this.kind = kind;
    }

    /** A number or date outside the range of the thing it measures. */
    public static Refusal outOfRange(String what, Object value, String allowed) {
        return new OutOfRange(new Told("", what, String.valueOf(value), allowed));
    }

    /** A name that stands in no list: an unknown part, unit, reading, jurisdiction. */
    public static Refusal unknown(String what, Object value, String allowed) {
        return new Unknown(new Told("", what, String.valueOf(value), allowed));
    }

    /** Text that cannot be read as what it should be. */
    public static Refusal malformed(String what, Object value, String allowed) {
        return new Malformed(new Told("", what, String.valueOf(value), allowed));
    }

    /** Something that has to be there and is not. */
    public static Refusal missing(String what, String allowed) {
        return new Missing(new Told("", what, "nothing", allowed));
    }

    /** Something well formed that the rules forbid now: signing an expired quote, paying more than is due. */
    public static Refusal notAllowed(String what, Object value, String allowed) {
        return new NotAllowed(new Told("", what, String.valueOf(value), allowed));
    }

    /** A file, folder or database that cannot be used: absent, locked, read-only, in the way. */
    public static Refusal unusable(String what, Object value, String allowed) {
        return new Unusable(new Told("", what, String.valueOf(value), allowed));
    }

    /** Evidence of danger: no price may be made. Ends a command with exit code 3. */
    public static Refusal stopWork(String what, Object value, String allowed) {
        return new StopWork(new Told("", what, String.valueOf(value), allowed));
    }

    /** The same refusal with the place in front: file, row, field. An outer place goes before an inner one. */
    public final Refusal at(String place) {
        Objects.requireNonNull(place, "place");
        return kind.apply(told.at(place));
    }

    /** File, row, field; empty when nothing was read from a file. */
    public final String where() {
        return told.where();
    }

    /** The thing that was refused, such as "gas static pressure". */
    public final String what() {
        return told.what();
    }

    /** The value met, as it was given. */
    public final String value() {
        return told.value();
    }

    /** What would have been accepted. */
    public final String allowed() {
        return told.allowed();
    }

    private record Told(String where, String what, String value, String allowed) {
        Told at(String place) {
            return new Told(where.isEmpty() ? place : place + ", " + where, what, value, allowed);
        }

        String line() {
            var text =
                    (where.isEmpty() ? "" : where + ": ") + what + " '" + value + "' is refused; allowed: " + allowed;
            return text.replaceAll("\\s+", " ").strip();
        }
    }

    /** See {@link #outOfRange}. */
    public static final class OutOfRange extends Refusal {
        private OutOfRange(Told told) {
            super(told, OutOfRange::new);
        }
    }

    /** See {@link #unknown}. */
    public static final class Unknown extends Refusal {
        private Unknown(Told told) {
            super(told, Unknown::new);
        }
    }

    /** See {@link #malformed}. */
    public static final class Malformed extends Refusal {
        private Malformed(Told told) {
            super(told, Malformed::new);
        }
    }

    /** See {@link #missing}. */
    public static final class Missing extends Refusal {
        private Missing(Told told) {
            super(told, Missing::new);
        }
    }

    /** See {@link #notAllowed}. */
    public static final class NotAllowed extends Refusal {
        private NotAllowed(Told told) {
            super(told, NotAllowed::new);
        }
    }

    /** See {@link #unusable}. */
    public static final class Unusable extends Refusal {
        private Unusable(Told told) {
            super(told, Unusable::new);
        }
    }

    /** See {@link #stopWork}. */
    public static final class StopWork extends Refusal {
        private StopWork(Told told) {
            super(told, StopWork::new);
        }
    }
}
