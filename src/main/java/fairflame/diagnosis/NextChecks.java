package fairflame.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What to do next. In this order: take bypass leads off, answer the danger gates, have a licensed person release what
 * must be released, resolve contradictions and doubts as they ask, then the checks that tell most for their time and
 * hazard ({@link Separation}).
 */
final class NextChecks {
    /** As many as a person keeps in mind; invented for the demo. */
    private static final int MOST_BY_SEPARATION = 5;

    /** Share of the best score from which the order of work decides; invented for the demo. */
    private static final double NEARLY = 0.4;

    /** Stands at the end of every list: what to do when nothing else is left. */
    static final String SECOND_LOOK = "second-look";

    private final Knowledge knowledge;
    private final Facts facts;
    private final Dangers dangers;
    private final List<Objection> wanted;

    NextChecks(Knowledge knowledge, Facts facts, Dangers dangers, List<Objection> wanted) {
        this.knowledge = knowledge;
        this.facts = facts;
        this.dangers = dangers;
        this.wanted = List.copyOf(wanted);
    }

    /** Whether the complaint asks for a licensed release that is not there. */
    static boolean lacksRelease(Knowledge knowledge, Facts facts) {
        var needed = knowledge.complaint(facts.file().complaint()).releaseFirst();
        return !needed.isEmpty()
                && facts.file().releases().stream().noneMatch(release -> needed.contains(release.gate()));
    }

    /** The list, best first; never empty. */
    List<NextCheck> after(List<Weighed> weighed) {
        var found = new LinkedHashMap<String, NextCheck>();
        facts.file().leads().stream().filter(lead -> !lead.removed()).forEach(lead -> put(found, lead(lead)));
        dangers.unanswered().forEach(gate -> put(found, gate(gate)));
        if (lacksRelease(knowledge, facts)) {
            put(found, release());
        }
        for (var objection : wanted) {
            objection.next().stream()
                    .filter(ref -> !facts.measured(ref, Facts.Trust.SOUND))
                    .forEach(ref -> put(found, check(ref, objection.words())));
        }
        bySeparation(weighed).forEach(next -> put(found, next));
        if (found.isEmpty()) {
            put(found, check(CheckRef.of(SECOND_LOOK), "Everything that could decide was read and nothing settles."));
        }
        return List.copyOf(found.values());
    }

    private static void put(Map<String, NextCheck> found, NextCheck next) {
        found.putIfAbsent(next.check() + next.conditions(), next);
    }

    private List<NextCheck> bySeparation(List<Weighed> weighed) {
        var open = weighed.stream()
                .filter(each -> !each.excluded() || each.isDecided())
                .toList();
        var separation = new Separation(facts, open);
        var scores = new TreeMap<CheckRef, Double>();
        for (var ref : asked(separation)) {
            var way = wayTo(ref);
            double bits = way.stream().mapToDouble(separation::of).sum();
            double burden =
                    way.stream().mapToDouble(step -> effort(step).burden()).sum();
            scores.merge(way.get(0), bits / burden, Math::max);
        }
        var found = new ArrayList<NextCheck>();
        while (found.size() < MOST_BY_SEPARATION && !scores.isEmpty()) {
            var best = best(scores);
            if (scores.getOrDefault(best, 0.0) <= 0) {
                break;
            }
            scores.remove(best);
            found.add(check(best, separation.reason(best)));
        }
        return found;
    }

    /** Among the checks that are nearly as good as the best the usual order of work decides. */
    private CheckRef best(Map<CheckRef, Double> scores) {
        double highest =
                scores.values().stream().mapToDouble(score -> score).max().orElse(0);
        return scores.entrySet().stream()
                .filter(entry -> entry.getValue() >= NEARLY * highest)
                .min(Comparator.comparingInt((Map.Entry<CheckRef, Double> entry) ->
                                effort(entry.getKey()).step())
                        .thenComparing(entry -> -rounded(entry.getValue()))
                        .thenComparing(Map.Entry::getKey))
                .orElseThrow()
                .getKey();
    }

    // A difference below a ten-thousandth is an error of arithmetic and must not decide.
    private static double rounded(double score) {
        return Math.rint(score * 10_000) / 10_000;
    }

    private Effort effort(CheckRef ref) {
        return knowledge.check(ref.check()).effort();
    }

    /** What some open cause still asks for. */
    private List<CheckRef> asked(Separation separation) {
        return separation.asked().stream().map(this::plain).collect(Collectors.toCollection(TreeSet::new)).stream()
                .filter(ref -> effort(ref).hazard() != Hazard.H4)
                .filter(ref -> !answeredInWords(ref))
                .toList();
    }

    /**
     * The check with what has to come before it, first things first. Its worth counts for the first step: gas pressure at
     * rest says little alone and opens the way to the dip and to the valve's voltage.
     */
    private List<CheckRef> wayTo(CheckRef ref) {
        var way = new ArrayList<CheckRef>();
        for (var before : knowledge.check(ref.check()).after()) {
            if (!facts.answered(before)) {
                wayTo(CheckRef.of(before)).stream()
                        .filter(step -> !way.contains(step))
                        .forEach(way::add);
            }
        }
        way.add(ref);
        return way;
    }

    /** Layout and plate stand in the case file itself; their readings only say that they are not to be had. */
    private boolean answeredInWords(CheckRef ref) {
        return (ref.equals(Facts.PIPE_LAYOUT) || ref.equals(Facts.DATA_PLATE)) && facts.measured(ref, Facts.Trust.ANY);
    }

    /** Until a check was done at all it is proposed without its circumstances. */
    private CheckRef plain(CheckRef ref) {
        var bare = CheckRef.of(ref.check());
        return facts.measured(bare, Facts.Trust.ANY) ? ref : bare;
    }

    private NextCheck check(CheckRef ref, String reason) {
        var check = knowledge.check(ref.check());
        var effort = check.effort();
        var tags = new TreeSet<>(ref.tags());
        var fast = tags.remove("fast");
        var instrument = check.instruments().stream()
                .map(knowledge::instrument)
                .filter(each -> fast ? each.speed() == Instrument.Speed.FAST : each.speed() != Instrument.Speed.SLOW)
                .map(Instrument::name)
                .collect(Collectors.joining(" or "));
        var circumstances = tags.stream()
                .map(tag -> knowledge.vocabulary().circumstances().get(tag))
                .filter(java.util.Objects::nonNull)
                .map(Circumstance::words)
                .collect(Collectors.joining(", "));
        return new NextCheck(
                check.id(),
                check.title() + (circumstances.isEmpty() ? "" : ", " + circumstances),
                reason,
                effort.minutes(),
                effort.hazard().name(),
                effort.who(),
                instrument,
                new ArrayList<>(tags));
    }

    private static NextCheck gate(Gate gate) {
        return new NextCheck(
                gate.id(),
                gate.question(),
                "Nothing settles until this danger was asked about: " + gate.title() + ".",
                gate.minutes(),
                Hazard.H1.name(),
                "T",
                "",
                List.of());
    }

    private static NextCheck lead(BypassLead lead) {
        return new NextCheck(
                "bypass-lead-off",
                "Take the test lead off " + lead.device() + " and record it",
                "A bridged safety switch is a momentary test; nothing settles while a lead is out.",
                1,
                Hazard.H1.name(),
                "T",
                "",
                List.of(lead.device()));
    }

    private NextCheck release() {
        var complaint = knowledge.complaint(facts.file().complaint());
        return new NextCheck(
                "licensed-release",
                "A licensed gas fitter examines the heater and signs a release that names the cause",
                "For this complaint nothing is repaired before one of the gates "
                        + String.join(", ", new TreeSet<>(complaint.releaseFirst())) + " is released.",
                30,
                Hazard.H3.name(),
                "G",
                "",
                List.of());
    }
}
