package fairflame.repair;

import fairflame.Refusal;
import fairflame.catalog.Remedy;
import fairflame.catalog.Shop;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Finding;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * From a settled finding to everything that may be offered for it. An unsettled finding and a danger cannot be handed
 * in at all: only the settled type is taken.
 */
public final class ScopeBuilder {
    private final Finding.Settled finding;
    private final Shop shop;
    private final KnownFacts facts;
    private final List<PairJudgement> pairs = new ArrayList<>();
    private final OfferedWays offered;
    private final ScopeDraft draft;

    private ScopeBuilder(Finding.Settled finding, CaseFile file, Shop shop, RepairInputs inputs) {
        this.finding = finding;
        this.shop = shop;
        var known = KnownFacts.of(finding, file, shop, inputs);
        for (var rule : shop.book().pairs()) {
            var atFault = finding.causes().stream()
                    .flatMap(cause -> cause.devices().stream())
                    .toList();
            var judgement = new PairJudge(file, inputs, known::has).judge(rule, atFault);
            pairs.add(judgement);
            known = known.with(judgement);
        }
        this.facts = known;
        this.offered = new OfferedWays(file, inputs);
        this.draft = new ScopeDraft(finding, shop, inputs, facts, pairs);
    }

    /**
     * All scopes for a finding, the suggested one first; none, with the advice as reason, when there is nothing to
     * repair.
     *
     * @throws Refusal when a cause has no remedy, a gas line has no sizing record, or tasks cannot stand together
     */
    public static RepairPlan plan(Finding.Settled finding, CaseFile file, Shop shop, RepairInputs inputs) {
        return new ScopeBuilder(finding, file, shop, inputs).plan();
    }

    private RepairPlan plan() {
        var reasons = new LinkedHashSet<String>();
        var options = new ArrayList<List<OfferedWay>>();
        for (var cause : finding.causes()) {
            var remedy = remedy(cause);
            if (remedy.ways().isEmpty()) {
                reasons.add(remedy.advice());
            } else {
                options.add(offered.of(remedy, facts));
            }
        }
        var scopes = new ArrayList<Scope>();
        for (var combination : combinations(options)) {
            scopes.add(draft.scope(combination, scopes.isEmpty(), reasons));
        }
        return new RepairPlan(scopes, List.copyOf(reasons));
    }

    private Remedy remedy(Candidate cause) {
        return shop.book()
                .remedy(cause.cause())
                .orElseThrow(() -> Refusal.unknown(
                        "remedy for cause",
                        cause.cause() + " " + cause.title(),
                        "a cause with an entry in scopes.yaml"));
    }

    /**
     * The suggested way of every cause together, then each alternative: where several causes share an alternative, all
     * of them take it, the others keep what is suggested.
     */
    private static List<List<OfferedWay>> combinations(List<List<OfferedWay>> options) {
        var combinations = new LinkedHashSet<List<OfferedWay>>();
        if (!options.isEmpty()) {
            combinations.add(options.stream().map(ways -> ways.get(0)).toList());
        }
        var alternatives = new LinkedHashSet<String>();
        options.forEach(ways -> ways.stream().skip(1).forEach(way -> alternatives.add(way.id())));
        for (var id : alternatives) {
            combinations.add(options.stream()
                    .map(ways -> ways.stream()
                            .filter(way -> way.id().equals(id))
                            .findFirst()
                            .orElse(ways.get(0)))
                    .toList());
        }
        return List.copyOf(combinations);
    }
}
