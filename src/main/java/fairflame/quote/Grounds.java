package fairflame.quote;

import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.Evidence;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why each cause is held to be so: the readings and rules that every line of its repair rests on. */
final class Grounds {
    private final Map<String, List<Basis>> byCause;

    private Grounds(Map<String, List<Basis>> byCause) {
        this.byCause = byCause;
    }

    static final Grounds NONE = new Grounds(Map.of());

    static Grounds of(List<Candidate> causes) {
        var byCause = new LinkedHashMap<String, List<Basis>>();
        for (var cause : causes) {
            var basis = new ArrayList<Basis>();
            for (var evidence : cause.supports()) {
                basis.add(reading(evidence));
            }
            var rests = cause.restsOn().isEmpty() ? "" : ", settled by " + cause.restsOn();
            basis.add(new Basis("finding", cause.title() + rests, "cause " + cause.cause()));
            byCause.put(cause.cause(), basis);
        }
        return new Grounds(byCause);
    }

    /** The grounds of a cause; none for a cause that the finding does not name. */
    List<Basis> of(String cause) {
        return byCause.getOrDefault(cause, List.of());
    }

    private static Basis reading(Evidence evidence) {
        return new Basis("reading", evidence.words(), "rule " + evidence.rule() + "; " + evidence.source());
    }
}
