package fairflame.repair;

import fairflame.catalog.Fact;
import fairflame.catalog.Shop;
import fairflame.catalog.Trade;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.Value;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which facts hold in a case, so that the conditions of the repair book can be answered. */
final class KnownFacts {
    private final Set<String> holding = new HashSet<>();

    private KnownFacts() {}

    /** The facts of a case, apart from those of a pair and of one gas line. */
    static KnownFacts of(Finding.Settled finding, CaseFile file, Shop shop, RepairInputs inputs) {
        var known = new KnownFacts();
        known.holding.addAll(inputs.stated());
        shop.book().facts().stream().filter(fact -> holds(fact, file)).forEach(fact -> known.holding.add(fact.id()));
        known.when(
                "cause-named", finding.causes().size() > 1 || !file.releases().isEmpty());
        known.when("released", !file.releases().isEmpty());
        known.when("technician-opens-taps", inputs.place().testTap().contains(Trade.TECHNICIAN));
        known.when("bypassed", !file.leads().isEmpty());
        finding.causes().forEach(cause -> known.addCause(cause));
        return known;
    }

    private void addCause(Candidate cause) {
        holding.add("cause:" + cause.cause());
        cause.devices().forEach(device -> holding.add("device:" + device));
    }

    private static boolean holds(Fact fact, CaseFile file) {
        var read = file.readings().stream()
                .filter(reading -> reading.check().equals(fact.check()))
                .anyMatch(reading -> reading.value() instanceof Value.Word word
                        && fact.readings().contains(word.word()));
        var old = fact.heaterYears().isPresent()
                && file.plate()
                        .ageYears()
                        .filter(years -> years >= fact.heaterYears().get())
                        .isPresent();
        return read || old;
    }

    private void when(String fact, boolean holds) {
        if (holds) {
            holding.add(fact);
        }
    }

    boolean has(String fact) {
        return holding.contains(fact);
    }

    /** The same facts and what was judged about a pair. */
    KnownFacts with(PairJudgement judgement) {
        var more = copy();
        more.holding.add(judgement.outcome().fact());
        more.when(
                "switch-dry",
                judgement.dryness().values().stream()
                        .allMatch(dryness -> dryness == Dryness.DRY || dryness == Dryness.DRY_ONCE));
        return more;
    }

    /** The same facts and those of the gas line of one way. */
    KnownFacts with(Optional<PipeJob> job) {
        var more = copy();
        job.ifPresent(line -> {
            more.holding.add("pipe-sized");
            line.runs().forEach(run -> {
                more.holding.add("material:" + run.material());
                more.holding.add(run.buried() ? PipeRun.BURIED : PipeRun.OPEN);
            });
        });
        return more;
    }

    private KnownFacts copy() {
        var copy = new KnownFacts();
        copy.holding.addAll(holding);
        return copy;
    }

    /** Whether all conditions hold; {@code not} in front turns one around. */
    boolean allow(List<String> conditions) {
        return conditions.stream()
                .allMatch(condition -> condition.startsWith("not ")
                        ? !has(condition.substring("not ".length()).strip())
                        : has(condition));
    }
}
