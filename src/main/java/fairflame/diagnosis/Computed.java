package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.quantity.Dimension;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A number worked out from several readings, named {@code computed.rise} and so on in a rule. */
enum Computed {
    /** Temperature rise of the water: read as one number, else outlet less inlet. */
    RISE("rise", Dimension.TEMPERATURE_RISE, List.of("water-rise"), List.of("water-out", "water-in"), Computed::rise),
    /** Clocked input as a share of the plate's, reduced for altitude. */
    INPUT_SHARE(
            "input-share",
            Dimension.SHARE,
            List.of("clocked-input"),
            List.of("clocked-flow", "clock-volume", "clock-seconds", "heating-value", "altitude"),
            facts -> FiringRate.of(facts).share().map(share -> new Amount(share.doubleValue(), Dimension.SHARE))),
    /** How far the input by water lies from the clocked one, percent, without a sign. */
    INPUT_APART(
            "input-apart",
            Dimension.SHARE,
            List.of("clocked-input", "water-flow"),
            List.of(),
            facts -> FiringRate.of(facts).apart().map(gap -> new Amount(Math.abs(gap.doubleValue()), Dimension.SHARE))),
    /** Sum of all appliances on the meter as a share of what the meter is rated for. */
    METER_LOAD("meter-load", Dimension.SHARE, List.of("meter-rating", "load-sum"), List.of(), Computed::meterLoad),
    /** Lowest line voltage read as a share of the rated one. */
    LINE_SHARE(
            "line-share",
            Dimension.SHARE,
            List.of("line-volts"),
            List.of("line-volts-pump-start", "line-rating"),
            Computed::lineShare),
    /** Leak to ground that the recorded minimum implies, by Ohm's law. */
    IMPLIED_LEAK(
            "implied-leak",
            Dimension.RESISTANCE,
            List.of("transformer-idle", "transformer-low", "valve-low", "contact-high-limit", "contact-outlet"),
            List.of(),
            LeakReadings::leak),
    /** What the valve would keep if nothing leaked, by Ohm's law. */
    VALVE_WITHOUT_LEAK(
            "valve-without-leak",
            Dimension.VOLTAGE,
            List.of("transformer-idle", "transformer-low", "valve-low", "contact-high-limit", "contact-outlet"),
            List.of(),
            LeakReadings::withoutLeak),
    /** Filter pressure above the clean mark. */
    FILTER_EXCESS(
            "filter-excess",
            Dimension.PRESSURE,
            List.of("filter-pressure", "filter-clean-pressure"),
            List.of(),
            facts -> facts.first("filter-pressure")
                    .flatMap(now -> facts.first("filter-clean-pressure").map(now::minus)));

    // Nominal line voltages in North America; from memory, not checked
    private static final double LOW_LINE = 120;
    private static final double HIGH_LINE = 240;
    private static final double BETWEEN_LINE_VOLTAGES = 160;

    private final String word;
    private final Dimension dimension;
    private final List<String> needs;
    private final List<String> also;
    private final Function<Facts, Optional<Amount>> rule;

    Computed(
            String word,
            Dimension dimension,
            List<String> needs,
            List<String> also,
            Function<Facts, Optional<Amount>> rule) {
        this.word = word;
        this.dimension = dimension;
        this.needs = List.copyOf(needs);
        this.also = List.copyOf(also);
        this.rule = rule;
    }

    String word() {
        return word;
    }

    Dimension dimension() {
        return dimension;
    }

    /** The usual checks to work it out from. */
    List<String> needs() {
        return needs;
    }

    /** What to read when it cannot be worked out; the plate when all its checks were read. */
    Set<CheckRef> missing(Facts facts) {
        if (from(facts).isPresent()) {
            return Set.of();
        }
        var missing = needs.stream()
                .map(CheckRef::of)
                .filter(ref -> !facts.measured(ref, Facts.Trust.ANY))
                .collect(Collectors.toUnmodifiableSet());
        return missing.isEmpty() ? Set.of(Facts.DATA_PLATE) : missing;
    }

    /** Further checks it may be worked out from. */
    List<String> also() {
        return also;
    }

    Optional<Amount> from(Facts facts) {
        return rule.apply(facts);
    }

    static Computed of(String word) {
        return Arrays.stream(values())
                .filter(value -> value.word.equals(word))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown(
                        "computed number",
                        word,
                        Arrays.stream(values()).map(Computed::word).collect(Collectors.joining(", "))));
    }

    private static Optional<Amount> rise(Facts facts) {
        return facts.first("water-rise")
                .or(() -> facts.first("water-out")
                        .flatMap(out -> facts.first("water-in").map(out::minus)));
    }

    private static Optional<Amount> meterLoad(Facts facts) {
        double value = FiringRate.of(facts).heatingValue().btuPerCubicFoot();
        return facts.first("load-sum")
                .flatMap(load -> facts.first("meter-rating")
                        .filter(rating -> rating.base() > 0)
                        .map(rating -> new Amount(100 * load.base() / value / rating.base(), Dimension.SHARE)));
    }

    private static Optional<Amount> lowest(Facts facts, String... checks) {
        return Arrays.stream(checks)
                .map(facts::first)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Amount::base));
    }

    // Without a rating the reading itself tells 120 V from 208 V and more.
    private static Optional<Amount> lineShare(Facts facts) {
        return lowest(facts, "line-volts", "line-volts-pump-start").map(volts -> {
            double rating = facts.first("line-rating")
                    .map(Amount::base)
                    .filter(rated -> rated > 0)
                    .orElse(volts.base() < BETWEEN_LINE_VOLTAGES ? LOW_LINE : HIGH_LINE);
            return new Amount(100 * volts.base() / rating, Dimension.SHARE);
        });
    }
}
