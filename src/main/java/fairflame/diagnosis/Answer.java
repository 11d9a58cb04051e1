package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a check can answer: a number within a range, or one of a few words. */
public sealed interface Answer {
    /** The value in a typed text; what it names is used in the message of a refusal. */
    Value read(String what, String text);

    /** Refuses a value that this check cannot give. */
    void admit(String what, Value value);

    /** Whether it and another are figures of one dimension. */
    default boolean comparable(Answer other) {
        return this instanceof Figure mine
                && other instanceof Figure theirs
                && mine.unit().dimension() == theirs.unit().dimension();
    }

    /** What is odd about an admitted value, without a full stop; empty when it is usual. */
    Optional<String> remark(Value value);

    /**
     * A number with a unit.
     *
     * @param unit unit of the ranges
     * @param possible outside it a reading is refused
     * @param usual outside it a reading is kept and questioned; empty when nothing is unusual
     */
    record Figure(Unit unit, Range possible, Optional<Range> usual) implements Answer {
        // "over 20 megohm" is what a meter shows that has run out of range
        private static final Pattern OVER = Pattern.compile("(?:>|over |above )\\s*(\\S.*)");
        private static final double METER_END_OHM = 1e6;

        @Override
        public Value read(String what, String text) {
            var wanted = text.strip().toLowerCase(Locale.ROOT);
            if (unit.dimension() == Dimension.RESISTANCE) {
                if (wanted.equals("open") || wanted.equals("open line")) {
                    return new Value.OpenLine();
                }
                var over = OVER.matcher(wanted);
                if (over.matches()) {
                    return beyond(what, text, Measure.parse(unit.dimension(), over.group(1)));
                }
            }
            try {
                return admitted(what, text, new Value.Measured(Measure.parse(unit.dimension(), text)));
            } catch (Refusal.Missing | Refusal.Unknown | Refusal.Malformed e) {
                throw e.at(what);
            }
        }

        private Value beyond(String what, String text, Measure end) {
            if (end.in(Unit.OHM) < METER_END_OHM) {
                throw Refusal.outOfRange(what, text, "over 1 megohm or more, else turn the meter's range up");
            }
            return new Value.OpenLine();
        }

        private Value admitted(String what, String text, Value.Measured value) {
            if (!possible.covers(value.measure().in(unit))) {
                throw Refusal.outOfRange(what, text.strip(), words(possible));
            }
            return value;
        }

        @Override
        public void admit(String what, Value value) {
            if (value instanceof Value.NotMeasured) {
                return;
            }
            if (value instanceof Value.Measured measured
                    && measured.measure().unit().dimension() == unit.dimension()) {
                admitted(what, measured.toString(), measured);
            } else if (!(value instanceof Value.OpenLine) || unit.dimension() != Dimension.RESISTANCE) {
                throw Refusal.malformed(what, value, words(possible));
            }
        }

        @Override
        public Optional<String> remark(Value value) {
            if (usual.isEmpty() || !(value instanceof Value.Measured measured)) {
                return Optional.empty();
            }
            var range = usual.get();
            return range.covers(measured.measure().in(unit))
                    ? Optional.empty()
                    : Optional.of("Unusual: " + measured + "; usual is " + words(range));
        }

        private String words(Range range) {
            var open = unit.dimension() == Dimension.RESISTANCE && Double.isInfinite(range.highest()) ? " or open" : "";
            return range + " " + unit.symbol() + open;
        }
    }

    /**
     * One of a few words.
     *
     * @param words in the order they are offered
     * @param good those that speak of no fault; empty when the words are not judged
     */
    record Words(List<String> words, List<String> good) implements Answer {
        public Words {
            words = List.copyOf(words);
            good = List.copyOf(good);
            for (var word : good) {
                if (!words.contains(word)) {
                    throw Refusal.unknown("good word", word, String.join(", ", words));
                }
            }
        }

        @Override
        public Value read(String what, String text) {
            var wanted = text.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
            var value = new Value.Word(wanted);
            admit(what, value);
            return value;
        }

        @Override
        public void admit(String what, Value value) {
            if (value instanceof Value.NotMeasured) {
                return;
            }
            if (!(value instanceof Value.Word word) || !words.contains(word.word())) {
                throw Refusal.unknown(what, value, String.join(", ", words) + ", not measured");
            }
        }

        @Override
        public Optional<String> remark(Value value) {
            return Optional.empty();
        }
    }
}
