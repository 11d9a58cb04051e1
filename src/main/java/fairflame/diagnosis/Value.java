package fairflame.diagnosis;

import fairflame.quantity.Measure;

/** What a check gave. "Not measured" is a value of its own and never counts as good. */
public sealed interface Value {
    /** A number with its unit, as typed. */
    record Measured(Measure measure) implements Value {
        @Override
        public String toString() {
            return measure.toString();
        }
    }

    /** An open line: a resistance beyond what the meter shows. */
    record OpenLine() implements Value {
        @Override
        public String toString() {
            return "open line";
        }
    }

    /** One of the words that the check allows, such as {@code yes}, {@code parallel}, {@code steady}. */
    record Word(String word) implements Value {
        @Override
        public String toString() {
            return word;
        }
    }

    /** The check was not done. */
    record NotMeasured() implements Value {
        @Override
        public String toString() {
            return "not measured";
        }
    }
}
