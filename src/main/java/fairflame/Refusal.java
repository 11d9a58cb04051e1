package fairflame;

import java.util.Objects;

/**
 * Something the program will not accept, told so that the reader can mend it: where it stood, what it was, the value
 * met, what is allowed instead and, if it is not plain, what to do. Always one line.
 *
 * <p>The core says what, value and allowed; the edge that read the input adds {@link #at where}.
 */
public abstract sealed class Refusal extends RuntimeException {
    private final String where;
    private final String what;
    private final String value;
    private final String allowed;

    private Refusal(String where, String what, String value, String allowed) {
        super(line(where, what, value, allowed), null, false, true);
        this.where = where;
        this.what = what;
        this.value = value;
        this.allowed = allowed;
    }

    /** A number or date outside the range of the thing it measures. */
    public static Refusal outOfRange(String what, Object value, String allowed) {
        return new OutOfRange("", what, String.valueOf(value), allowed);
    }

    /** A name that stands in no list: an unknown part, unit, reading, jurisdiction. */
    public static Refusal unknown(String what, Object value, String allowed) {
        return new Unknown("", what, String.valueOf(value), allowed);
    }

    /** Text that cannot be read as what it should be. */
    public static Refusal malformed(String what, Object value, String allowed) {
        return new Malformed("", what, String.valueOf(value), allowed);
    }

    /** Something that has to be there and is not. */
    public static Refusal missing(String what, String allowed) {
        return new Missing("", what, "nothing", allowed);
    }

    /** Something well formed that the rules forbid now: signing an expired quote, paying more than is due. */
    public static Refusal notAllowed(String what, Object value, String allowed) {
        return new NotAllowed("", what, String.valueOf(value), allowed);
    }

    /** A file, folder or database that cannot be used: absent, locked, read-only, in the way. */
    public static Refusal unusable(String what, Object value, String allowed) {
        return new Unusable("", what, String.valueOf(value), allowed);
    }

    /** Evidence of danger: no price may be made. Ends a command with exit code 3. */
    public static Refusal stopWork(String what, Object value, String allowed) {
        return new StopWork("", what, String.valueOf(value), allowed);
    }

    /** The same refusal with the place in front: file, row, field. An outer place goes before an inner one. */
    public final Refusal at(String place) {
        Objects.requireNonNull(place, "place");
        return moved(where.isEmpty() ? place : place + ", " + where);
    }

    abstract Refusal moved(String place);

    /** File, row, field; empty when nothing was read from a file. */
    public final String where() {
        return where;
    }

    /** The thing that was refused, such as "gas static pressure". */
    public final String what() {
        return what;
    }

    /** The value met, as it was given. */
    public final String value() {
        return value;
    }

    /** What would have been accepted. */
    public final String allowed() {
        return allowed;
    }

    private static String line(String where, String what, String value, String allowed) {
        var text = (where.isEmpty() ? "" : where + ": ") + what + " '" + value + "' is refused; allowed: " + allowed;
        return text.replaceAll("\\s+", " ").strip();
    }

    /** See {@link #outOfRange}. */
    public static final class OutOfRange extends Refusal {
        private OutOfRange(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new OutOfRange(place, what(), value(), allowed());
        }
    }

    /** See {@link #unknown}. */
    public static final class Unknown extends Refusal {
        private Unknown(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new Unknown(place, what(), value(), allowed());
        }
    }

    /** See {@link #malformed}. */
    public static final class Malformed extends Refusal {
        private Malformed(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new Malformed(place, what(), value(), allowed());
        }
    }

    /** See {@link #missing}. */
    public static final class Missing extends Refusal {
        private Missing(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new Missing(place, what(), value(), allowed());
        }
    }

    /** See {@link #notAllowed}. */
    public static final class NotAllowed extends Refusal {
        private NotAllowed(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new NotAllowed(place, what(), value(), allowed());
        }
    }

    /** See {@link #unusable}. */
    public static final class Unusable extends Refusal {
        private Unusable(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new Unusable(place, what(), value(), allowed());
        }
    }

    /** See {@link #stopWork}. */
    public static final class StopWork extends Refusal {
        private StopWork(String where, String what, String value, String allowed) {
            super(where, what, value, allowed);
        }

        @Override
        Refusal moved(String place) {
            return new StopWork(place, what(), value(), allowed());
        }
    }
}
