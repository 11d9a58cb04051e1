package fairflame.screen.bench;

import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Evidence;
import fairflame.diagnosis.ReadingVerdict;
import fairflame.quote.Basis;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** All that bears on a cause, with the readings that each reason uses: for it, against it, and what was not tested. */
final class CauseGrounds {
    private final List<ReadingVerdict> verdicts;
    private final UnaryOperator<String> titles;

    /** Grounds over these readings; {@code titles} gives the title of a check by its id. */
    CauseGrounds(List<ReadingVerdict> verdicts, UnaryOperator<String> titles) {
        this.verdicts = List.copyOf(verdicts);
        this.titles = titles;
    }

    List<Basis> of(Candidate candidate) {
        var grounds = new ArrayList<Basis>();
        if (!candidate.restsOn().isEmpty()) {
            grounds.add(new Basis("rests-on", candidate.restsOn(), ""));
        }
        candidate.supports().forEach(evidence -> grounds.add(reason("supports", evidence)));
        candidate.against().forEach(evidence -> grounds.add(reason("against", evidence)));
        if (candidate.standing() != Candidate.Standing.RULED_OUT) {
            candidate.missing().forEach(check -> grounds.add(new Basis("missing", titles.apply(check), "")));
        }
        return grounds;
    }

    private Basis reason(String bearing, Evidence evidence) {
        var words = new StringBuilder(evidence.words());
        verdicts.stream()
                .filter(verdict -> evidence.checks().contains(verdict.reading().check()))
                .forEach(verdict -> words.append('\n').append(told(verdict)));
        return new Basis(bearing, words.toString(), evidence.rule() + "; " + evidence.source());
    }

    /** One reading with what it was read with and while what. */
    private static String told(ReadingVerdict verdict) {
        var reading = verdict.reading();
        var terms = new ArrayList<String>();
        if (!reading.instrument().isEmpty()) {
            terms.add(reading.instrument());
        }
        reading.conditions().stream().sorted().forEach(terms::add);
        var how = terms.isEmpty() ? "" : " (" + String.join(", ", terms).replace('-', ' ') + ")";
        return "\u2013 " + verdict.title() + ": " + reading.value() + how;
    }
}
