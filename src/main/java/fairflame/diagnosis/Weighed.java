package fairflame.diagnosis;

import fairflame.diagnosis.Facts.Trust;
import fairflame.diagnosis.Rule.Says;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A cause with what the readings say about it, before the finding as a whole is looked at.
 *
 * @param supports reasons for it, deciding ones too
 * @param against reasons against it
 * @param decided deciding rules that hold on sound readings, in the order of the knowledge
 * @param excluded whether a sound reading rules it out
 * @param missing the shortest list of checks that would decide it; empty when decided or no longer decidable
 */
record Weighed(
        Cause cause, Weight supports, Weight against, List<Rule> decided, boolean excluded, List<CheckRef> missing) {
    /** Support that makes a cause likely, when it also outweighs what speaks against; invented for the demo. */
    static final int LIKELY = 4;

    static Weighed of(Cause cause, Facts facts) {
        var named = byRelease(cause, facts);
        var supports = new Weight();
        var against = new Weight();
        var decided = new ArrayList<Rule>();
        boolean excluded = false;
        for (var rule : cause.rules()) {
            boolean pro = rule.says() == Says.SUPPORTS || rule.says() == Says.DECIDES;
            var sound = rule.evidence(facts, Trust.SOUND);
            if (pro) {
                var any = facts.allSound() ? sound : sound.or(() -> rule.evidence(facts, Trust.ANY));
                any.ifPresent(reason -> supports.add(reason, weight(rule, sound.isPresent())));
            } else {
                sound.ifPresent(reason -> against.add(reason, rule.weight()));
                excluded |= rule.says() == Says.EXCLUDES && sound.isPresent();
            }
            if (rule.says() == Says.DECIDES && sound.isPresent()) {
                decided.add(rule);
            }
        }
        named.ifPresent(rule -> {
            supports.add(rule.evidence(facts, Trust.SOUND).orElseThrow(), rule.weight());
            decided.add(rule);
        });
        return new Weighed(
                cause, supports, against, decided, excluded, decided.isEmpty() ? missing(cause, facts) : List.of());
    }

    // What would decide on sound readings only supports on doubted ones.
    private static int weight(Rule rule, boolean sound) {
        return rule.says() == Says.DECIDES && !sound ? Says.SUPPORTS.usualWeight() : rule.weight();
    }

    private static Optional<Rule> byRelease(Cause cause, Facts facts) {
        return facts.file().releases().stream()
                .filter(release -> cause.isCalled(release.cause()))
                .sorted(Comparator.comparing(Release::toString))
                .findFirst()
                .map(release -> new Rule(
                        cause.id() + "/release",
                        Says.DECIDES,
                        Says.DECIDES.usualWeight(),
                        List.of(),
                        List.of(),
                        Template.plain("Named in the release of gate " + release.gate() + " by " + release.name()
                                + ", licence " + release.licence() + "."),
                        new Rule.Outcome("the licensed person's release", List.of(), List.of()),
                        "common practice, no source"));
    }

    private static List<CheckRef> missing(Cause cause, Facts facts) {
        return cause.rules().stream()
                .filter(rule -> rule.says() == Says.DECIDES)
                .map(rule -> rule.missing(facts, Trust.SOUND))
                .filter(missing -> !missing.isEmpty())
                .min(Comparator.comparingInt(Set::size))
                .map(List::copyOf)
                .orElse(List.of());
    }

    boolean isDecided() {
        return !decided.isEmpty();
    }

    /** Proved by one reading and ruled out by another. */
    boolean isDisputed() {
        return isDecided() && excluded;
    }

    int balance() {
        return supports.sum() - against.sum();
    }

    Candidate candidate(boolean settled) {
        var standing = settled
                ? Candidate.Standing.SETTLED
                : excluded && !isDecided()
                        ? Candidate.Standing.RULED_OUT
                        : isDecided() || (supports.sum() >= LIKELY && balance() > 0)
                                ? Candidate.Standing.LIKELY
                                : Candidate.Standing.OPEN;
        return new Candidate(
                cause.id(),
                cause.title(),
                cause.plain(),
                standing,
                supports.reasons(),
                against.reasons(),
                missing.stream().map(CheckRef::toString).toList(),
                settled ? restsOn() : "",
                devices(),
                repairs());
    }

    private String restsOn() {
        return String.join(
                "; also ",
                new LinkedHashSet<>(
                        decided.stream().map(rule -> rule.outcome().restsOn()).toList()));
    }

    private List<String> devices() {
        return decided.stream()
                .map(rule -> rule.outcome().devices())
                .filter(devices -> !devices.isEmpty())
                .findFirst()
                .orElse(cause.devices());
    }

    private List<String> repairs() {
        return decided.stream()
                .map(rule -> rule.outcome().repairs())
                .filter(repairs -> !repairs.isEmpty())
                .findFirst()
                .orElse(cause.repairs());
    }

    /** Reasons and their sum, while they are gathered. */
    static final class Weight {
        private final List<Evidence> reasons = new ArrayList<>();
        private int sum;

        // The same sentence twice is one reason: a rule that narrows another to warm readings adds nothing to it.
        private void add(Evidence reason, int weight) {
            if (reasons.stream().noneMatch(each -> each.words().equals(reason.words()))) {
                reasons.add(reason);
                sum += weight;
            }
        }

        List<Evidence> reasons() {
            return List.copyOf(reasons);
        }

        int sum() {
            return sum;
        }
    }
}
