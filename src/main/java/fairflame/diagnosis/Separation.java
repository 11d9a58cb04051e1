package fairflame.diagnosis;

import fairflame.diagnosis.Facts.Trust;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * How well a check tells the remaining causes apart: the expected fall of uncertainty, in bits.
 *
 * <p>Each cause has a chance proportional to how common it is, doubled for every two points that its reasons for
 * outweigh those against. A check that could make a rule of a cause hold points at that cause, if it is the true one,
 * with the rule's reach, and is silent otherwise. Causes whose rules ask the same of the check are pointed at together:
 * it does not tell them apart. What is left uncertain on average is taken from what was uncertain before. The figures
 * are invented for the demo; they only order the checks and never settle a cause.
 */
final class Separation {
    private final Map<String, Double> chances = new TreeMap<>();
    private final List<Weighed> open;
    private final double uncertain;
    /** Rules that wait for readings, by cause and by check: every check is held against every cause. */
    private final Map<String, Map<String, List<Waiting>>> waiting = new HashMap<>();

    Separation(Facts facts, List<Weighed> open) {
        this.open = List.copyOf(open);
        double sum = open.stream().mapToDouble(Separation::odds).sum();
        open.forEach(each -> chances.put(each.cause().id(), odds(each) / sum));
        uncertain = entropy(List.copyOf(chances.values()));
        for (var each : open) {
            var ofCause = waiting.computeIfAbsent(each.cause().id(), id -> new HashMap<>());
            for (var rule : each.cause().rules()) {
                var wait = new Waiting(rule, rule.missing(facts, Trust.SOUND));
                wait.missing().stream()
                        .map(CheckRef::check)
                        .distinct()
                        .forEach(check -> ofCause.computeIfAbsent(check, id -> new ArrayList<>())
                                .add(wait));
            }
        }
    }

    /** What some cause still asks for. */
    Set<CheckRef> asked() {
        return waiting.values().stream()
                .flatMap(ofCause -> ofCause.values().stream())
                .flatMap(List::stream)
                .flatMap(wait -> wait.missing().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * A rule that cannot speak yet.
     *
     * @param missing readings that it waits for; at least one
     */
    private record Waiting(Rule rule, Set<CheckRef> missing) {}

    private double chance(Weighed each) {
        return chances.getOrDefault(each.cause().id(), 0.0);
    }

    private static double odds(Weighed each) {
        return each.cause().common() * Math.pow(2, each.balance() / 2.0);
    }

    /** Bits that a check is expected to bring. */
    double of(CheckRef ref) {
        var outcomes = new TreeMap<String, List<Double>>();
        for (var each : open) {
            var reach = reach(each, ref);
            double pointed = chance(each) * reach.strength();
            outcomes.computeIfAbsent(reach.asked(), any -> new ArrayList<>()).add(pointed);
            outcomes.computeIfAbsent("silent", any -> new ArrayList<>()).add(chance(each) - pointed);
        }
        double after =
                outcomes.values().stream().mapToDouble(Separation::remaining).sum();
        return Math.max(0, uncertain - after);
    }

    /** What stays uncertain after one outcome, weighted by how likely the outcome is. */
    private static double remaining(List<Double> shares) {
        double total = shares.stream().mapToDouble(share -> share).sum();
        return total <= 0
                ? 0
                : total * entropy(shares.stream().map(share -> share / total).toList());
    }

    /**
     * How surely a check would point at a cause if it were the true one, and what the check would have to say.
     *
     * @param asked the conditions about this check
     */
    private record Reach(String asked, double strength) {}

    private Reach reach(Weighed each, CheckRef ref) {
        return waiting.getOrDefault(each.cause().id(), Map.of()).getOrDefault(ref.check(), List.of()).stream()
                .map(wait -> reach(wait, ref))
                .filter(reach -> reach.strength() > 0)
                .max(Comparator.comparingDouble(Reach::strength).thenComparing(Reach::asked))
                .orElse(new Reach("silent", 0));
    }

    private static Reach reach(Waiting wait, CheckRef ref) {
        var rule = wait.rule();
        if (wait.missing().stream().noneMatch(lack -> means(ref, lack))) {
            return new Reach("silent", 0);
        }
        var asked = rule.when().stream()
                .filter(condition -> condition.mentions().stream().anyMatch(lack -> means(ref, lack)))
                .map(Condition::toString)
                .sorted()
                .collect(Collectors.joining(" and "));
        return new Reach(asked, power(rule) / wait.missing().size());
    }

    private static boolean means(CheckRef ref, CheckRef lack) {
        return ref.check().equals(lack.check()) && lack.tags().containsAll(ref.tags());
    }

    private static double power(Rule rule) {
        return switch (rule.says()) {
            case DECIDES -> 0.9;
            case EXCLUDES -> 0.8;
            case SUPPORTS -> Math.min(0.6, 0.15 * rule.weight());
            case AGAINST -> Math.min(0.4, 0.1 * rule.weight());
        };
    }

    private static double entropy(List<Double> chances) {
        return chances.stream()
                .filter(chance -> chance > 0)
                .mapToDouble(chance -> -chance * Math.log(chance) / Math.log(2))
                .sum();
    }

    /** Why this check, in words: the likeliest causes that it speaks about. */
    String reason(CheckRef ref) {
        var about = open.stream()
                .filter(each -> reach(each, ref).strength() > 0)
                .sorted(Comparator.comparing((Weighed each) ->
                                -chance(each) * reach(each, ref).strength())
                        .thenComparing(each -> each.cause().id()))
                .toList();
        var names = about.stream()
                .limit(3)
                .map(each -> each.cause().title().toLowerCase(java.util.Locale.ROOT))
                .collect(Collectors.joining("; "));
        return (about.size() == 1 ? "It speaks about " : "It separates " + about.size() + " causes, first ") + names
                + ".";
    }
}
