package fairflame.diagnosis;

import fairflame.diagnosis.Candidate.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * From a case file to a finding. Pure: the same file gives the same finding, in whatever order its readings stand.
 *
 * <p>Danger comes first and ends diagnosis. A cause settles when one of its deciding rules holds on sound readings, no
 * reading rules it out, no contradiction blocks it, every gate was answered no or released, and every bypass lead is
 * back.
 */
public final class Diagnosis {
    private static final Comparator<Candidate> ORDER = Comparator.comparing(Candidate::standing);

    private final Knowledge knowledge;
    private final Facts facts;
    private final Dangers dangers;
    private final Doubts doubts;
    private final List<Objection> objections;

    private Diagnosis(Knowledge knowledge, CaseFile file) {
        knowledge.admit(file);
        this.knowledge = knowledge;
        var read = Facts.of(file, knowledge.vocabulary());
        this.doubts = new Doubts(knowledge, read);
        this.facts = read.doubting(doubts.readings());
        this.dangers = new Dangers(knowledge, facts);
        this.objections = Objection.contradictions(knowledge, facts);
    }

    /** What the readings prove. Refuses words that the knowledge does not have and values that a check cannot give. */
    public static Finding of(Knowledge knowledge, CaseFile file) {
        return new Diagnosis(knowledge, file).finding();
    }

    /** What each reading is worth on its own, in the usual order of work. */
    public static List<ReadingVerdict> verdicts(Knowledge knowledge, CaseFile file) {
        var diagnosis = new Diagnosis(knowledge, file);
        return new Judging(knowledge, diagnosis.facts, diagnosis.doubts).all();
    }

    private Finding finding() {
        var open = dangers.open();
        if (!open.isEmpty()) {
            return new Finding.StopWork(open, List.of(), List.of());
        }
        var weighed =
                candidates().stream().map(cause -> Weighed.of(cause, facts)).toList();
        var settled = settled(weighed);
        var all = weighed.stream()
                .sorted(Comparator.comparing(Weighed::balance)
                        .reversed()
                        .thenComparing(each -> each.cause().id()))
                .map(each -> each.candidate(settled.contains(each.cause().id())))
                .sorted(ORDER)
                .toList();
        var conflicts = conflicts(weighed);
        if (!settled.isEmpty()) {
            return new Finding.Settled(
                    all.stream()
                            .filter(each -> each.standing() == Standing.SETTLED)
                            .toList(),
                    all,
                    conflicts);
        }
        var next = new NextChecks(knowledge, facts, dangers, wanted());
        return new Finding.Unsettled(next.after(weighed), all, conflicts);
    }

    /** Causes of the complaint, and whatever a licensed person named in a release. */
    private List<Cause> candidates() {
        var releases = facts.file().releases();
        return knowledge.causes().stream()
                .filter(cause -> cause.complaints().contains(facts.file().complaint())
                        || releases.stream().anyMatch(release -> cause.isCalled(release.cause())))
                .toList();
    }

    private Set<String> settled(List<Weighed> weighed) {
        if (isHeld()) {
            return Set.of();
        }
        var settled = new HashSet<String>();
        boolean grows = true;
        while (grows) {
            var before = Set.copyOf(settled);
            grows = weighed.stream()
                    .filter(each -> settles(each, before))
                    .map(each -> settled.add(each.cause().id()))
                    .reduce(false, Boolean::logicalOr);
        }
        return settled;
    }

    private boolean settles(Weighed weighed, Set<String> others) {
        var company = weighed.cause().onlyWith();
        return weighed.isDecided()
                && !weighed.excluded()
                && objections.stream()
                        .noneMatch(objection ->
                                objection.held().holds(weighed.cause().id()))
                && (company.isEmpty() || company.stream().anyMatch(others::contains));
    }

    /** Nothing settles while a gate is unanswered, a lead is placed or a release that must come first is missing. */
    private boolean isHeld() {
        return !dangers.unanswered().isEmpty()
                || facts.file().leadsStillPlaced() > 0
                || NextChecks.lacksRelease(knowledge, facts);
    }

    /** What doubts and contradictions ask for, in the order of the knowledge. */
    private List<Objection> wanted() {
        var all = new ArrayList<>(objections);
        all.addAll(doubts.all());
        return all;
    }

    private List<String> conflicts(List<Weighed> weighed) {
        var words = new ArrayList<String>();
        wanted().stream().map(Objection::words).forEach(words::add);
        weighed.stream().filter(Weighed::isDisputed).forEach(each -> words.add(disputed(each)));
        words.addAll(BypassTally.of(facts.file()).problems());
        return words.stream().distinct().toList();
    }

    private static String disputed(Weighed each) {
        var reasons = each.against().reasons().stream().map(Evidence::words).collect(Collectors.joining(" "));
        return "Readings prove and rule out the same cause, " + each.cause().title() + ": " + reasons;
    }
}
