package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.diagnosis.KnowledgeProblem.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Finds what is wrong with knowledge before it is used on a heater. */
public final class KnowledgeCheck {
    private final Knowledge knowledge;
    private final Set<String> repairs;
    private final List<KnowledgeProblem> problems = new ArrayList<>();

    private KnowledgeCheck(Knowledge knowledge, Set<String> repairs) {
        this.knowledge = knowledge;
        this.repairs = Set.copyOf(repairs);
    }

    /**
     * Everything wrong with knowledge that could be read, in the order of its rows.
     *
     * @param repairs ids of the tasks that the shop has a standard time for
     */
    public static List<KnowledgeProblem> problems(Knowledge knowledge, Set<String> repairs) {
        return new KnowledgeCheck(knowledge, repairs).all();
    }

    /** Everything wrong with knowledge files: the rows that cannot be read first, then what is wrong with the rest. */
    public static List<KnowledgeProblem> problems(Map<String, String> files, Set<String> repairs) {
        var found = new ArrayList<KnowledgeProblem>();
        var rows = new KnowledgeFiles(files, refusal -> found.add(refused(refusal)));
        var knowledge = new KnowledgeReader(rows).read();
        found.addAll(problems(knowledge, repairs));
        return List.copyOf(found);
    }

    private static KnowledgeProblem refused(Refusal refusal) {
        boolean check = refusal instanceof Refusal.Unknown && refusal.what().equals("check");
        return new KnowledgeProblem(
                check ? Kind.UNKNOWN_CHECK : Kind.REFUSED_ROW,
                refusal.where().isEmpty() ? "knowledge" : refusal.where(),
                refusal.what() + " '" + refusal.value() + "' is refused; allowed: " + refusal.allowed());
    }

    private List<KnowledgeProblem> all() {
        sources();
        knowledge.causes().forEach(this::cause);
        sameProofOfTwoCauses();
        unusedChecks();
        return List.copyOf(problems);
    }

    private void add(Kind kind, String where, String words) {
        problems.add(new KnowledgeProblem(kind, where, words));
    }

    private void cause(Cause cause) {
        var where = "cause " + cause.id();
        var deciding = deciding(cause);
        if (deciding.isEmpty()) {
            add(Kind.NO_DECIDING_CHECK, where, "no rule decides it");
        } else if (!reachable(cause, new HashSet<>())) {
            add(Kind.UNREACHABLE_CAUSE, where, "no readings can settle it");
        }
        cause.rules().forEach(rule -> impossible(where, rule));
        deciding.forEach(rule -> provedAndRuledOut(where, cause, rule));
        if (cause.repairs().isEmpty() && cause.remedy().isEmpty()) {
            add(Kind.NO_REMEDY, where, "neither repairs nor a remedy in words");
        }
        Stream.concat(cause.repairs().stream(), deciding.stream().flatMap(rule -> rule.outcome().repairs().stream()))
                .distinct()
                .filter(repair -> !repairs.contains(repair))
                .forEach(repair ->
                        add(Kind.REPAIR_WITHOUT_TIME, where, "the shop has no standard time for repair " + repair));
    }

    private static List<Rule> deciding(Cause cause) {
        return cause.rules().stream()
                .filter(rule -> rule.says() == Rule.Says.DECIDES)
                .toList();
    }

    private boolean reachable(Cause cause, Set<String> asked) {
        if (!asked.add(cause.id()) || cause.complaints().isEmpty()) {
            return false;
        }
        boolean decidable = deciding(cause).stream()
                .anyMatch(rule -> Satisfiable.of(rule, knowledge).isEmpty()
                        && excluding(cause, rule).isEmpty());
        boolean company = cause.onlyWith().isEmpty()
                || cause.onlyWith().stream()
                        .flatMap(id -> knowledge.cause(id).stream())
                        .anyMatch(other -> reachable(other, new HashSet<>(asked)));
        return decidable && company;
    }

    private void impossible(String where, Rule rule) {
        Satisfiable.of(rule, knowledge)
                .ifPresent(why -> add(Kind.CONTRADICTION, where + " rule " + rule.id(), "can never hold: " + why));
    }

    private void provedAndRuledOut(String where, Cause cause, Rule deciding) {
        excluding(cause, deciding)
                .forEach(rule -> add(
                        Kind.CONTRADICTION,
                        where + " rule " + deciding.id(),
                        "whenever it decides, " + rule.id() + " rules the cause out"));
    }

    /** Excluding rules that hold whenever a deciding one does. */
    private static List<Rule> excluding(Cause cause, Rule deciding) {
        return cause.rules().stream()
                .filter(rule ->
                        rule.says() == Rule.Says.EXCLUDES && rule.unless().isEmpty())
                .filter(rule -> deciding.when().containsAll(rule.when()))
                .toList();
    }

    private void sameProofOfTwoCauses() {
        var causes = List.copyOf(knowledge.causes());
        for (int i = 0; i < causes.size(); i++) {
            for (var other : causes.subList(i + 1, causes.size())) {
                var one = causes.get(i);
                deciding(one).stream()
                        .filter(rule -> deciding(other).stream().anyMatch(rival -> sameProof(rule, rival)))
                        .filter(rule -> !one.repairs().equals(other.repairs()))
                        .forEach(rule -> add(
                                Kind.CONTRADICTION,
                                "cause " + one.id() + " rule " + rule.id(),
                                "the same readings settle " + other.id() + ", which is repaired otherwise"));
            }
        }
    }

    private static boolean sameProof(Rule one, Rule other) {
        return Set.copyOf(one.when()).equals(Set.copyOf(other.when()));
    }

    private void unusedChecks() {
        var used = new UsedChecks(knowledge).ids();
        knowledge.checks().stream()
                .filter(check -> !used.contains(check.id()))
                .forEach(check -> add(Kind.UNUSED_CHECK, "check " + check.id(), "no rule asks for it"));
    }

    private void sources() {
        knowledge.complaints().forEach(row -> source("complaint " + row.id(), row.source()));
        knowledge.instruments().forEach(row -> source("instrument " + row.id(), row.source()));
        knowledge.circumstances().forEach(row -> source("circumstance " + row.id(), row.source()));
        knowledge.checks().forEach(row -> source("check " + row.id(), row.source()));
        knowledge.gates().forEach(row -> source("gate " + row.id(), row.source()));
        var rules = knowledge.rulebook();
        rules.causes().values().forEach(cause -> {
            source("cause " + cause.id(), cause.source());
            cause.rules().forEach(rule -> source("rule " + rule.id(), rule.source()));
        });
        rules.contradictions().forEach(row -> source("contradiction " + row.id(), row.source()));
        rules.doubts().forEach(row -> source("doubt " + row.id(), row.source()));
        rules.verdicts()
                .values()
                .forEach(row -> row.marks().forEach(mark -> source("mark " + mark.id(), mark.source())));
    }

    private void source(String where, String source) {
        if (source.isEmpty()) {
            add(Kind.MISSING_SOURCE, where, "has no source");
        } else if (!Source.WITHOUT_DOCUMENT.contains(source)
                && knowledge.source(source).isEmpty()) {
            add(Kind.MISSING_SOURCE, where, "the source " + source + " is not listed");
        }
    }
}
