package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.Candidate.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DiagnosisPropertiesTest {
    private static final long SEED = 20_261_125;

    private static Set<String> rules(List<Evidence> reasons) {
        return reasons.stream().map(Evidence::rule).collect(Collectors.toSet());
    }

    @Test
    void theOrderOfTheReadingsNeverChangesAFinding() {
        var cases = new RandomCases(SEED);
        for (int i = 0; i < 400; i++) {
            var visit = cases.visit(5 + cases.upTo(40));
            var finding = visit.finding();
            var verdicts = Diagnosis.verdicts(Visit.KNOWLEDGE, visit.file());
            var other = visit.file(cases.shuffled(visit.readings()));

            assertThat(Diagnosis.of(Visit.KNOWLEDGE, other))
                    .as("seed " + SEED + " case " + i)
                    .isEqualTo(finding);
            assertThat(Diagnosis.verdicts(Visit.KNOWLEDGE, other))
                    .as("seed " + SEED + " case " + i)
                    .isEqualTo(verdicts);
        }
    }

    @Test
    void aReadingTakenTwiceChangesNothing() {
        var cases = new RandomCases(SEED + 1);
        for (int i = 0; i < 100; i++) {
            var visit = cases.visit(20);
            var twice = new ArrayList<>(visit.readings());
            twice.addAll(visit.readings());

            assertThat(Diagnosis.of(Visit.KNOWLEDGE, visit.file(twice)))
                    .as("seed " + (SEED + 1) + " case " + i)
                    .isEqualTo(visit.finding());
        }
    }

    /**
     * A supporting reading gives a cause a new reason and takes none, gives it none against it, and makes no other reading
     * doubtful or contradictory.
     */
    @Test
    void aSupportingReadingNeverLowersACause() {
        var cases = new RandomCases(SEED + 2);
        int supported = 0;
        int raised = 0;
        for (int i = 0; i < 1_500; i++) {
            var visit = cases.visit(2 + cases.upTo(12));
            var before = visit.finding();
            var after = visit.with(cases.reading()).finding();
            if (before instanceof Finding.StopWork || after instanceof Finding.StopWork) {
                continue;
            }
            if (!new HashSet<>(before.conflicts()).containsAll(after.conflicts())) {
                continue;
            }
            for (var cause : after.candidates()) {
                var was = Findings.candidate(before, cause.cause());
                boolean more = !rules(was.supports()).containsAll(rules(cause.supports()));
                if (more
                        && rules(cause.supports()).containsAll(rules(was.supports()))
                        && rules(was.against()).containsAll(rules(cause.against()))) {
                    supported++;
                    raised += cause.standing().compareTo(was.standing()) < 0 ? 1 : 0;
                    assertThat(cause.standing())
                            .as("seed " + (SEED + 2) + " case " + i + " " + cause.cause() + " " + visit.readings())
                            .isLessThanOrEqualTo(was.standing());
                }
            }
        }
        assertThat(supported).as("supporting readings met").isGreaterThan(75);
        assertThat(raised).as("causes raised").isGreaterThan(5);
    }

    @Test
    void noDangerReadingEverEndsSettled() {
        var dangers = List.of(
                "gas-smell yes",
                "gas-detector alarm",
                "joint-leak bubbles",
                "co-room 71 ppm",
                "co-alarm sounding",
                "people-unwell yes",
                "scorch outside-chamber",
                "rollout-fuse open",
                "thermal-fuse open",
                "wiring-look melted",
                "shock-felt yes",
                "gfci trips-again",
                "flooded yes",
                "live-parts-water standing-water",
                "gas-static 50.1 inwc",
                "gas-firing 60 inwc",
                "bridge-found found",
                "co-flue 401 ppm",
                "burner-box wet",
                "banging boiling-or-banging",
                "manifold-idle 0.1 inwc",
                "transformer-idle 30.1 v",
                "transformer-low 45 v",
                "valve-low 31 v");
        var cases = new RandomCases(SEED + 3);
        for (int i = 0; i < 1_200; i++) {
            var danger = dangers.get(i % dangers.size());
            var visit = cases.visit(cases.upTo(30)).read(danger);

            assertThat(visit.finding())
                    .as("seed " + (SEED + 3) + " case " + i + " " + danger)
                    .isInstanceOf(Finding.StopWork.class);
        }
    }

    @Test
    void nothingSettlesWithAGateUnansweredOrALeadPlaced() {
        var cases = new RandomCases(SEED + 4);
        for (int i = 0; i < 600; i++) {
            var visit = cases.visit(cases.upTo(30));
            var open = i % 2 == 0 ? visit.notAsked("G" + (1 + cases.upTo(9))) : visit.lead("outlet-switch", false);

            assertThat(open.finding()).as("seed " + (SEED + 4) + " case " + i).isNotInstanceOf(Finding.Settled.class);
        }
    }

    @Test
    void everyFindingIsWellFormed() {
        var cases = new RandomCases(SEED + 5);
        int settled = 0;
        for (int i = 0; i < 800; i++) {
            var finding = cases.visit(cases.upTo(25)).finding();
            var what = "seed " + (SEED + 5) + " case " + i;
            finding.match(
                    good -> assertThat(good.causes()).as(what).isNotEmpty(),
                    open -> assertThat(open.next()).as(what).isNotEmpty(),
                    stop -> assertThat(stop.dangers()).as(what).isNotEmpty());
            assertThat(finding.candidates())
                    .as(what)
                    .isSortedAccordingTo((one, other) -> one.standing().compareTo(other.standing()));
            if (finding instanceof Finding.Settled good) {
                settled++;
                assertThat(good.causes())
                        .as(what)
                        .allMatch(cause -> cause.standing() == Standing.SETTLED
                                && !cause.restsOn().isEmpty()
                                && !cause.supports().isEmpty());
            }
        }
        assertThat(settled).isPositive();
    }
}
