package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.gas.Reconciliation;
import fairflame.quantity.Measure;
import fairflame.quantity.Unit;
import fairflame.wording.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** A sentence with places for values, such as {@code "The drop is {gas-static - gas-firing}."}. */
final class Template {
    private static final Pattern PLACE = Pattern.compile("\\{([^{}]*)\\}");
    private static final int MOST_DECIMALS = 2;

    private final String text;
    private final List<Piece> pieces;

    private Template(String text, List<Piece> pieces) {
        this.text = text;
        this.pieces = List.copyOf(pieces);
    }

    static Template parse(String text, Vocabulary vocabulary) {
        var pieces = new ArrayList<Piece>();
        var matcher = PLACE.matcher(text);
        int end = 0;
        while (matcher.find()) {
            pieces.add(
                    new Piece(text.substring(end, matcher.start()), Optional.of(place(matcher.group(1), vocabulary))));
            end = matcher.end();
        }
        var rest = text.substring(end);
        if (rest.contains("{") || rest.contains("}")) {
            throw Refusal.malformed("words", text, "every { closed by a }");
        }
        pieces.add(new Piece(rest, Optional.empty()));
        return new Template(text, pieces);
    }

    /** A sentence without places. */
    static Template plain(String text) {
        return new Template(text, List.of(new Piece(text, Optional.empty())));
    }

    private static Place place(String inside, Vocabulary vocabulary) {
        if (inside.equals("pipe")) {
            return new Place.OfPipe(vocabulary.wording());
        }
        if (!inside.startsWith("plate.") && !inside.startsWith("computed.") && !inside.contains(" ")) {
            return new Place.OfReading(RuleText.ref(inside, vocabulary), vocabulary.wording());
        }
        return new Place.OfTerm(RuleText.term(inside, vocabulary), vocabulary.wording());
    }

    /** Checks that must be bound before the sentence can be said. */
    Set<CheckRef> refs() {
        var refs = new TreeSet<CheckRef>();
        pieces.forEach(piece -> piece.place().ifPresent(place -> refs.addAll(place.refs())));
        return refs;
    }

    String in(Binding binding) {
        var said = new StringBuilder();
        for (var piece : pieces) {
            said.append(piece.before());
            piece.place().ifPresent(place -> said.append(place.words(binding)));
        }
        // A unit that ends with a stop closes the sentence by itself.
        return said.toString().replace("w.c..", "w.c.");
    }

    @Override
    public String toString() {
        return text;
    }

    private record Piece(String before, Optional<Place> place) {}

    private sealed interface Place {
        Set<CheckRef> refs();

        String words(Binding binding);

        record OfReading(CheckRef ref, Wording wording) implements Place {
            @Override
            public Set<CheckRef> refs() {
                return Set.of(ref);
            }

            @Override
            public String words(Binding binding) {
                var value = binding.reading(ref).value();
                var said = value instanceof Value.Word word ? word.word().replace('-', ' ') : value.toString();
                return wording.of(said);
            }
        }

        record OfTerm(Term term, Wording wording) implements Place {
            @Override
            public Set<CheckRef> refs() {
                return term.refs();
            }

            @Override
            public String words(Binding binding) {
                return term.in(binding).map(amount -> printed(amount, binding)).orElse(wording.of("unknown"));
            }

            private String printed(Amount amount, Binding binding) {
                if (Double.isInfinite(amount.base())) {
                    return wording.of("open line");
                }
                var typed = term.refs().stream()
                        .map(binding::reading)
                        .map(Reading::value)
                        .toList();
                int decimals = 0;
                var unit = term.shown();
                for (var value : typed) {
                    if (value instanceof Value.Measured measured) {
                        decimals = Math.max(
                                decimals,
                                Math.min(
                                        MOST_DECIMALS,
                                        measured.measure().value().scale()));
                        unit = measured.measure().unit().dimension() == amount.dimension()
                                ? measured.measure().unit()
                                : unit;
                    }
                }
                if (typed.isEmpty()) {
                    decimals = 1;
                }
                var base = new Measure(BigDecimal.valueOf(amount.base()), Unit.baseOf(amount.dimension()));
                var rounded = BigDecimal.valueOf(base.in(unit)).setScale(decimals, RoundingMode.HALF_UP);
                return new Measure(typed.isEmpty() ? shortened(rounded) : rounded, unit).toString();
            }

            private static BigDecimal shortened(BigDecimal number) {
                var stripped = number.stripTrailingZeros();
                return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
            }
        }

        record OfPipe(Wording wording) implements Place {
            @Override
            public Set<CheckRef> refs() {
                return Set.of();
            }

            @Override
            public String words(Binding binding) {
                return wording.of(binding.facts()
                        .file()
                        .pipe()
                        .map(Reconciliation::words)
                        .orElse("the gas line was not computed"));
            }
        }
    }
}
