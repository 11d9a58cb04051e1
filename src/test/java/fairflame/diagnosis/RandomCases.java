package fairflame.diagnosis;

import fairflame.quantity.Measure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Case files with readings at random: nothing physical, everything possible. */
final class RandomCases {
    private static final List<Set<String>> CONDITIONS =
            List.of(Set.of(), Set.of(), Set.of("cold"), Set.of("warm"), Set.of("furnace-on"), Set.of("heater-alone"));
    private static final List<String> INSTRUMENTS = List.of("", "", "u-tube", "slow-digital");
    private static final List<String> COMPLAINTS =
            Visit.KNOWLEDGE.complaints().stream().map(Complaint::id).toList();

    private final Random random;
    private final List<Check> checks = List.copyOf(Visit.KNOWLEDGE.checks());

    RandomCases(long seed) {
        random = new Random(seed);
    }

    Visit visit(int readings) {
        var visit = Visit.of(COMPLAINTS.get(random.nextInt(COMPLAINTS.size())))
                .plate("input 400000btu/h", "minimum 5inwc", "maximum 50inwc", "manifold 3.5inwc", "rise 20");
        for (int i = 0; i < readings; i++) {
            visit.with(reading());
        }
        return visit;
    }

    Reading reading() {
        return reading(checks.get(random.nextInt(checks.size())));
    }

    Reading reading(Check check) {
        return new Reading(
                check.id(),
                value(check.answer()),
                INSTRUMENTS.get(random.nextInt(INSTRUMENTS.size())),
                CONDITIONS.get(random.nextInt(CONDITIONS.size())),
                random.nextInt(10) > 0,
                "");
    }

    private Value value(Answer answer) {
        if (random.nextInt(25) == 0) {
            return new Value.NotMeasured();
        }
        if (answer instanceof Answer.Words words) {
            return new Value.Word(words.words().get(random.nextInt(words.words().size())));
        }
        var figure = (Answer.Figure) answer;
        var range = random.nextBoolean() ? figure.usual().orElse(figure.possible()) : figure.possible();
        if (Double.isInfinite(range.highest())) {
            return random.nextBoolean()
                    ? new Value.OpenLine()
                    : measured(Math.pow(10, 7 * random.nextDouble()), figure);
        }
        return measured(range.lowest() + random.nextDouble() * (range.highest() - range.lowest()), figure);
    }

    private static Value measured(double value, Answer.Figure figure) {
        var rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        var possible = figure.possible();
        var kept = Math.max(possible.lowest(), Math.min(possible.highest(), rounded.doubleValue()));
        return new Value.Measured(new Measure(BigDecimal.valueOf(kept), figure.unit()));
    }

    List<Reading> shuffled(List<Reading> readings) {
        var copy = new ArrayList<>(readings);
        java.util.Collections.shuffle(copy, random);
        return copy;
    }

    int upTo(int bound) {
        return random.nextInt(bound);
    }
}
