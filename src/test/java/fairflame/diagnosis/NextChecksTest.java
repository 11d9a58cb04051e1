package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class NextChecksTest {
    /** What the heater of the flagship complaint answers to whatever is asked. */
    private static Map<String, String> flagship() {
        var truth = new HashMap<String, String>();
        for (var check : Visit.KNOWLEDGE.checks()) {
            if (check.answer() instanceof Answer.Words words && !words.good().isEmpty()) {
                truth.put(check.id(), words.good().get(0));
            }
        }
        truth.putAll(Map.of(
                "seconds-to-drop-out", "25 s",
                "worse-after-rain", "yes",
                "worse-in-wind", "no",
                "fault-code", "ignition",
                "switch-bodies", "crust",
                "filter-pressure", "14 psi",
                "filter-clean-pressure", "12 psi",
                "water-rise", "12 f",
                "gas-static", "10.1 inwc",
                "gas-firing", "8.9 inwc"));
        truth.put("line-regulator", "none");
        truth.putAll(Map.of(
                "valve-low", "15.7 v",
                "transformer-low", "21 v",
                "transformer-idle", "26.3 v",
                "line-volts", "121 v",
                "resets-as-it-cools", "no",
                "first-to-fall", "volts",
                "leak-high-limit", "22 kilohm",
                "leak-outlet", "31 kilohm"));
        return truth;
    }

    /** Does whatever comes first until something settles; the checks in the order they were asked for. */
    private static List<NextCheck> walk(Visit visit, Map<String, String> truth) {
        var done = new ArrayList<NextCheck>();
        while (visit.finding() instanceof Finding.Unsettled unsettled) {
            var next = unsettled.next().get(0);
            if (!truth.containsKey(next.check()) || done.size() > 60) {
                throw new AssertionError("after " + ids(done) + " no answer to " + next);
            }
            var conditions = next.conditions().isEmpty() ? "" : " " + next.conditions();
            visit.read(next.check() + " " + truth.get(next.check()) + conditions);
            done.add(next);
        }
        return done;
    }

    private static List<String> ids(List<NextCheck> checks) {
        return checks.stream().map(NextCheck::check).toList();
    }

    @Test
    void theFlagshipIsAskedInAnOrderThatACarefulTechnicianWouldDefend() {
        var visit = Visit.of("drops-out").plate("input 400000btu/h", "minimum 4inwc", "maximum 14inwc", "rise 20");

        var order = walk(visit, flagship());

        assertThat(Findings.settled(visit.finding()).causes())
                .extracting(Candidate::cause)
                .containsExactly("LD01");
        // How long it burns splits the tree; then what can be asked and seen, then water, then gas, then volts.
        assertThat(ids(order).get(0)).isEqualTo("seconds-to-drop-out");
        var steps = order.stream()
                .map(next -> Visit.KNOWLEDGE.check(next.check()).effort().step())
                .map(step -> step <= 4 ? 4 : step)
                .toList();
        assertThat(steps).isSorted();
        assertThat(ids(order)).containsSubsequence("switch-bodies", "gas-static", "gas-firing", "valve-low");
        assertThat(order.stream().mapToInt(NextCheck::minutes).sum()).isLessThan(70);
        assertThat(ids(order)).doesNotContain("bypass-pair", "burner-look", "exchanger-look");
    }

    @Test
    void aBypassIsNeverProposedBeforeTheOhmmeter() {
        var first = Findings.unsettled(Visit.of("drops-out").finding());

        assertThat(ids(first.next())).noneMatch(check -> check.startsWith("bypass-"));
    }

    @Test
    void everyUnansweredGateComesBeforeAnyReading() {
        var visit = Visit.of("drops-out").notAsked("G2", "G7").read("valve-low 15 v [minimum-hold]");

        assertThat(ids(Findings.unsettled(visit.finding()).next())).startsWith("G2", "G7");
    }

    @Test
    void aSettledProofWaitsForTheLastGate() {
        var proved = Visit.of("drops-out").read("leak-high-limit 20 kilohm", "leak-outlet 20 kilohm");
        assertThat(proved.finding()).isInstanceOf(Finding.Settled.class);

        var open = Findings.unsettled(proved.notAsked("G8").finding());
        assertThat(ids(open.next()).get(0)).isEqualTo("G8");
        assertThat(Findings.candidate(open, "LD01").standing()).isEqualTo(Candidate.Standing.LIKELY);
    }

    @Test
    void sootAsksForALicensedReleaseBeforeAnythingElse() {
        var visit = Visit.of("soot-or-rollout").plate("rise 20").read("soot wet", "water-rise 3 f");

        var unsettled = Findings.unsettled(visit.finding());
        assertThat(unsettled.next().get(0).check()).isEqualTo("licensed-release");
        assertThat(unsettled.next().get(0).who()).isEqualTo("G");

        assertThat(visit.released("G2", "condensing").finding()).isInstanceOf(Finding.Settled.class);
    }

    @Test
    void aReleaseOfAnotherDangerDoesNotStandForTheOneThatIsAskedFor() {
        var visit = Visit.of("soot-or-rollout").plate("rise 20").read("soot wet", "water-rise 3 f");

        var other = Findings.unsettled(visit.released("G1", "condensing").finding());
        assertThat(other.next().get(0).check()).isEqualTo("licensed-release");
        assertThat(other.next().get(0).reason()).contains("G2").doesNotContain("G1");
    }

    @Test
    void onlyATestLeadThatIsStillOnIsAskedToBeTakenOff() {
        var visit = Visit.of("drops-out").lead("outlet switch", true);
        assertThat(ids(Findings.unsettled(visit.finding()).next())).doesNotContain("bypass-lead-off");

        var open = Findings.unsettled(visit.lead("high-limit switch", false).finding());
        assertThat(open.next().get(0).check()).isEqualTo("bypass-lead-off");
        assertThat(open.next().get(0).conditions()).containsExactly("high-limit switch");
        assertThat(ids(open.next())).containsOnlyOnce("bypass-lead-off");
    }

    @Test
    void aMissingPlateIsAskedForByName() {
        var visit = Visit.of("drops-out").read("gas-static 7 inwc", "gas-firing 5 inwc");

        assertThat(ids(Findings.unsettled(visit.finding()).next())).contains("data-plate");
    }

    @Test
    void aCauseThatIsProvedAndRuledOutIsShownAsConflict() {
        var visit = Visit.of("leak")
                .read(
                        "joint-leak none",
                        "manifold-idle 0 inwc",
                        "leak-place header",
                        "leak-when-warm stops",
                        "exchanger-look pinhole");
        var blocked = visit.finding();

        assertThat(blocked.conflicts()).anyMatch(words -> words.contains("prove and rule out the same cause"));
    }

    @Test
    void aToldReadingIsAskedForAgain() {
        var visit = Visit.of("drops-out").read("leak-high-limit 20 kilohm [told]", "leak-outlet 20 kilohm");

        var unsettled = Findings.unsettled(visit.finding());
        assertThat(Findings.candidate(unsettled, "LD01").missing()).contains("leak-high-limit");
    }

    @Test
    void reasonsNameTheCausesThatAreSeparated() {
        var next = Findings.unsettled(Visit.of("drops-out").finding()).next().get(0);

        assertThat(next.reason()).startsWith("It separates").contains("both water-side temperature switches");
        assertThat(next.minutes()).isPositive();
        assertThat(next.instrument()).isEqualTo("stopwatch");
    }
}
