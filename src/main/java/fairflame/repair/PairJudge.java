package fairflame.repair;

import fairflame.catalog.PairRule;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.quantity.Resistance;
import fairflame.quantity.Unit;
import fairflame.repair.PairJudgement.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Decides about a pair from readings, age and circumstances. By rule both go when both are damaged, when one is damaged
 * and the other damp, or when the same water reached both. One alone is enough only when everything speaks for it: the
 * other is proved dry cold and warm, its contact is good, the water is stopped, its age is known and not old, and it is
 * not of one batch with the failed one. In between both are recommended. Common practice, no source.
 */
final class PairJudge {
    private final CaseFile file;
    private final RepairInputs inputs;
    private final Predicate<String> fact;

    /**
     * @param fact whether a fact holds, by id
     */
    PairJudge(CaseFile file, RepairInputs inputs, Predicate<String> fact) {
        this.file = file;
        this.inputs = inputs;
        this.fact = fact;
    }

    /**
     * The judgement about a pair.
     *
     * @param atFault devices that the finding names
     */
    PairJudgement judge(PairRule rule, List<String> atFault) {
        var dryness = new LinkedHashMap<String, Dryness>();
        rule.members().forEach(member -> dryness.put(member.device(), Dryness.of(rule, member, file.readings())));
        var worst = worst(rule, atFault);
        var reasons = new ArrayList<String>();
        var outcome = outcome(rule, dryness, worst, reasons);
        return new PairJudgement(rule, outcome, dryness, worst, reasons);
    }

    private String worst(PairRule rule, List<String> atFault) {
        var named = rule.members().stream()
                .map(PairRule.Member::device)
                .filter(atFault::contains)
                .toList();
        if (named.size() == 1) {
            return named.get(0);
        }
        var first = rule.members().get(0);
        var second = rule.members().get(1);
        var ofFirst = lowestLeak(first);
        var ofSecond = lowestLeak(second);
        var secondIsWorse =
                ofSecond.isPresent() && (ofFirst.isEmpty() || ofSecond.get().compareTo(ofFirst.get()) < 0);
        return (secondIsWorse ? second : first).device();
    }

    private Optional<Resistance> lowestLeak(PairRule.Member member) {
        return Dryness.lowest(readings(member.leakChecks()));
    }

    private Outcome outcome(PairRule rule, Map<String, Dryness> dryness, String worst, List<String> reasons) {
        var damaged = dryness.values().stream().filter(Dryness.DAMAGED::equals).count();
        var damp = dryness.values().stream().filter(Dryness.DAMP::equals).count();
        rule.members()
                .forEach(member -> reasons.add("The " + member.title() + " "
                        + dryness.getOrDefault(member.device(), Dryness.UNPROVED)
                                .words() + "."));
        if (damaged == 2 || (damaged == 1 && damp == 1)) {
            reasons.add("By rule both are replaced: neither measured good.");
            return Outcome.BY_RULE;
        }
        if (fact.test(rule.facts().sameWater())) {
            reasons.add("By rule both are replaced: the same water reached both.");
            return Outcome.BY_RULE;
        }
        var doubts = doubts(rule, dryness, worst);
        if (doubts.isEmpty()) {
            reasons.add("One alone is enough: the other is proved good, and the water is stopped.");
            return Outcome.SINGLE_ALLOWED;
        }
        reasons.add("Both are recommended: " + String.join("; ", doubts) + ".");
        return Outcome.RECOMMENDED;
    }

    /** What speaks against leaving the other part in, in words. */
    private List<String> doubts(PairRule rule, Map<String, Dryness> dryness, String worst) {
        var doubts = new ArrayList<String>();
        var other = rule.members().stream()
                .filter(member -> !member.device().equals(worst))
                .findFirst()
                .orElseThrow();
        if (dryness.get(other.device()) != Dryness.DRY) {
            doubts.add("the " + other.title() + " is not proved dry, cold and warm");
        }
        if (!Dryness.allBelow(readings(other.contactChecks()), rule.contactBelow())) {
            doubts.add("the contact of the " + other.title() + " is not proved good");
        }
        if (!fact.test(rule.facts().waterStopped())) {
            doubts.add("the way of the water is not found and stopped");
        }
        if (fact.test(rule.facts().sameBatch())) {
            doubts.add("both are of one batch and place");
        }
        var years = years(rule);
        if (years.isEmpty()) {
            doubts.add("the age is not known");
        } else if (years.get() > rule.age().oldAfterYears()) {
            doubts.add("the age is over " + rule.age().oldAfterYears() + " years");
        }
        return doubts;
    }

    private Optional<Double> years(PairRule rule) {
        return inputs.partYears()
                .map(Integer::doubleValue)
                .or(() -> readings(rule.age().checks()).stream()
                        .flatMap(reading -> reading.value() instanceof Value.Measured measured
                                ? Optional.of(measured.measure().in(Unit.YEAR)).stream()
                                : Optional.<Double>empty().stream())
                        .max(Double::compareTo))
                .or(() -> file.plate().ageYears().map(Integer::doubleValue));
    }

    private List<Reading> readings(List<String> checks) {
        return file.readings().stream()
                .filter(reading -> checks.contains(reading.check()))
                .toList();
    }
}
