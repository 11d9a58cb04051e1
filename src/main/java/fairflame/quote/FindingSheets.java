package fairflame.quote;

import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Evidence;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.NextCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Tells a finding in the words of the paper. */
public final class FindingSheets {
    // The first few, best first: a customer needs no list of everything that could be tried.
    private static final int CHECKS = 3;

    private FindingSheets() {}

    /** A settled finding: what is wrong, what proves it, what was excluded. */
    public static FindingSheet of(Finding.Settled finding, List<Gauge> gauges) {
        return new FindingSheet(
                finding.causes().stream().map(Candidate::plain).collect(Collectors.joining(" ")),
                finding.causes().stream().map(Candidate::title).toList(),
                words(finding.causes()),
                ruledOut(finding),
                finding.conflicts(),
                gauges);
    }

    /** A finding that is not settled: what points where, what contradicts, and what is to be checked next. */
    public static FindingSheet of(Finding.Unsettled finding, List<Gauge> gauges) {
        var unknown = new ArrayList<>(finding.conflicts());
        finding.next().stream().limit(CHECKS).forEach(check -> unknown.add(words(check)));
        var open = finding.candidates().stream()
                .filter(candidate -> candidate.standing() != Candidate.Standing.RULED_OUT)
                .toList();
        return new FindingSheet(
                "The readings do not yet prove what is wrong, so no repair is priced today.",
                List.of(),
                words(open),
                ruledOut(finding),
                unknown,
                gauges);
    }

    /** The next check as a customer reads it. */
    static String words(NextCheck check) {
        return "Next: " + check.title() + ". " + check.reason() + " (about " + check.minutes() + " minutes)";
    }

    private static List<String> words(List<Candidate> candidates) {
        return candidates.stream()
                .flatMap(candidate -> candidate.supports().stream())
                .map(Evidence::words)
                .distinct()
                .toList();
    }

    private static List<String> ruledOut(Finding finding) {
        return finding.candidates().stream()
                .filter(candidate -> candidate.standing() == Candidate.Standing.RULED_OUT)
                .map(FindingSheets::excluded)
                .toList();
    }

    private static String excluded(Candidate candidate) {
        var reasons = candidate.against().stream().map(Evidence::words).collect(Collectors.joining(" "));
        return reasons.isEmpty() ? candidate.title() : candidate.title() + ": " + reasons;
    }
}
