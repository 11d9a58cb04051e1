package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import fairflame.diagnosis.KnowledgeProblem.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class KnowledgeCheckTest {
    private static final Pattern TASK = Pattern.compile("(?m)^ {2}- id: (R\\w+)$");

    private static final String ODD = """
            - id: ODD
              title: Odd
              plain: "Odd."
              complaints: [drops-out]
              common: 1
              remedy: "Nothing."
              source: invented for the demo
            """;

    /** Tasks that the sample shop has a standard time for. */
    private static Set<String> sampleTasks() {
        try {
            return TASK.matcher(Files.readString(Path.of("catalog-sample/tasks.yaml")))
                    .results()
                    .map(match -> match.group(1))
                    .collect(Collectors.toSet());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<KnowledgeProblem> problems(KnowledgeTexts texts) {
        return KnowledgeCheck.problems(texts.files(), sampleTasks());
    }

    private static List<KnowledgeProblem> withCause(String more) {
        return problems(new KnowledgeTexts().append("causes-x.yaml", ODD + more.indent(2)));
    }

    private static void only(List<KnowledgeProblem> problems, Kind kind, String where, String words) {
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).kind()).isEqualTo(kind);
        assertThat(problems.get(0).where()).contains(where);
        assertThat(problems.get(0).words()).contains(words);
    }

    @Test
    void theShippedKnowledgeIsClean() {
        assertThat(KnowledgeCheck.problems(Knowledge.shippedFiles(), sampleTasks()))
                .extracting(Object::toString)
                .isEmpty();
        assertThat(KnowledgeCheck.problems(Knowledge.shipped(), sampleTasks())).isEmpty();
    }

    @Test
    void aCauseWithoutADecidingCheckIsFound() {
        only(
                withCause("for: [{id: a, when: soot is wet, words: x, source: invented for the demo}]"),
                Kind.NO_DECIDING_CHECK,
                "cause ODD",
                "no rule decides it");
    }

    @Test
    void aRuleThatCanNeverHoldIsFoundAndItsCauseIsUnreachable() {
        var problems = withCause("decides: [{id: a, when: [gas-static > 5 inwc, gas-static < 3 inwc], words: x,"
                + " rests-on: x, source: invented for the demo}]");

        assertThat(problems)
                .extracting(KnowledgeProblem::kind)
                .containsExactly(Kind.UNREACHABLE_CAUSE, Kind.CONTRADICTION);
        assertThat(problems.get(1))
                .hasToString("cause ODD rule ODD/decides/a: can never hold: no number of gas-static is left");
    }

    @Test
    void aNumberThatTheCheckCannotGiveIsFound() {
        var problems = withCause("decides: [{id: a, when: valve-low > 46 v, words: x, rests-on: x,"
                + " source: invented for the demo}]");

        assertThat(problems).extracting(KnowledgeProblem::kind).contains(Kind.CONTRADICTION, Kind.UNREACHABLE_CAUSE);
    }

    @Test
    void wordsThatExcludeEachOtherAreFound() {
        var problems = withCause("for:\n  - {id: a, when: [soot is wet, soot is dry], words: x, source: M-1}\n"
                + "  - {id: b, when: [soot is wet or dry, soot is not dry], words: x, source: M-1}\n"
                + "  - {id: c, when: [leak-outlet is open, leak-outlet < 5 ohm], words: x, source: M-1}\n"
                + "  - {id: d, when: [leak-outlet is open, leak-outlet > 5 ohm], words: x, source: M-1}\n"
                + "decides: [{id: e, when: soot is wet, words: x, rests-on: x, source: M-1}]");

        assertThat(problems)
                .extracting(KnowledgeProblem::toString)
                .containsExactly(
                        "cause ODD rule ODD/for/a: can never hold: no word of soot is left",
                        "cause ODD rule ODD/for/c: can never hold: leak-outlet cannot be open and below a number");
    }

    @Test
    void aProofThatRulesItsOwnCauseOutIsFound() {
        var problems = withCause("decides: [{id: a, when: [soot is wet, hard-water is yes], words: x, rests-on: x,"
                + " source: M-1}]\nexcludes: [{id: b, when: soot is wet, words: x, source: M-1}]");

        assertThat(problems)
                .extracting(KnowledgeProblem::kind)
                .containsExactlyInAnyOrder(Kind.UNREACHABLE_CAUSE, Kind.CONTRADICTION);
        assertThat(problems).anyMatch(problem -> problem.words().contains("ODD/excludes/b rules the cause out"));
    }

    @Test
    void theSameProofOfTwoCausesWithOtherRepairsIsFound() {
        var problems = withCause("decides: [{id: a, when: leak-place is header, words: x, rests-on: x, source: M-1}]");

        only(problems, Kind.CONTRADICTION, "cause LK04", "the same readings settle ODD");
    }

    @Test
    void aCauseThatNeedsCompanyItCannotHaveIsUnreachable() {
        var alone = problems(new KnowledgeTexts().append("causes-x.yaml", ODD + """
                          only-with: [ODD]
                          decides: [{id: a, when: soot is wet, words: x, rests-on: x, source: M-1}]
                        """));

        only(alone, Kind.UNREACHABLE_CAUSE, "cause ODD", "no readings can settle it");
    }

    @Test
    void aCauseOfNoComplaintIsUnreachable() {
        only(
                problems(
                        new KnowledgeTexts()
                                .append(
                                        "causes-x.yaml",
                                        ODD.replace("[drops-out]", "[]")
                                                + "  decides: [{id: a, when: soot is wet, words: x, rests-on: x, source: M-1}]\n")),
                Kind.UNREACHABLE_CAUSE,
                "cause ODD",
                "no readings");
    }

    @Test
    void aRepairWithoutTimeIsFound() {
        only(
                problems(new KnowledgeTexts().replace("causes-leak.yaml", "repairs: [R26]", "repairs: [R26, R99]")),
                Kind.REPAIR_WITHOUT_TIME,
                "cause LK04",
                "R99");
        only(
                problems(new KnowledgeTexts().replace("causes-leak.yaml", "repairs: [R02]", "repairs: [R98]")),
                Kind.REPAIR_WITHOUT_TIME,
                "cause LK03",
                "R98");
    }

    @Test
    void aCauseWithNothingToDoIsFound() {
        only(
                problems(new KnowledgeTexts().replace("causes-leak.yaml", "repairs: [R26]", "repairs: []")),
                Kind.NO_REMEDY,
                "cause LK04",
                "neither repairs nor a remedy");
    }

    @Test
    void aMissingSourceIsFoundInEveryKindOfRow() {
        only(
                problems(new KnowledgeTexts().replace("gates.yaml", "source: S-CO\n", "source: \"\"\n")),
                Kind.MISSING_SOURCE,
                "gate G2",
                "has no source");
        only(
                problems(new KnowledgeTexts().replace("doubts.yaml", "source: S-UA", "source: S-NOWHERE")),
                Kind.MISSING_SOURCE,
                "doubt D-FLAME-PARALLEL",
                "S-NOWHERE is not listed");
        only(
                problems(new KnowledgeTexts().replace("verdicts.yaml", "source: S-TRADE5", "source: hearsay")),
                Kind.MISSING_SOURCE,
                "mark gas-static/within",
                "hearsay");
        only(
                problems(new KnowledgeTexts().replace("contradictions.yaml", "source: M-4", "source: hearsay")),
                Kind.MISSING_SOURCE,
                "contradiction X-SHARED-LOAD",
                "hearsay");
        only(
                problems(new KnowledgeTexts()
                        .replace("causes-trips.yaml", "source: M-7\n  for", "source: hearsay\n  for")),
                Kind.MISSING_SOURCE,
                "cause TM02",
                "hearsay");
        only(
                problems(new KnowledgeTexts().replace("causes-trips.yaml", "source: M-7}", "source: hearsay}")),
                Kind.MISSING_SOURCE,
                "rule TM01/for/at-rating",
                "hearsay");
        only(
                problems(new KnowledgeTexts().replace("instruments.csv", ",S-UA", ",hearsay")),
                Kind.MISSING_SOURCE,
                "instrument microammeter",
                "hearsay");
        only(
                problems(new KnowledgeTexts().replace("circumstances.csv", "firing,load,M-4", "firing,load,hearsay")),
                Kind.MISSING_SOURCE,
                "circumstance furnace-on",
                "hearsay");
        only(
                problems(new KnowledgeTexts().replace("checks.csv", ",M-8", ",hearsay")),
                Kind.MISSING_SOURCE,
                "check tries",
                "hearsay");
        only(
                problems(new KnowledgeTexts()
                        .replace("complaints.csv", "slowly.,,\"common practice, no source\"", "slowly.,,hearsay")),
                Kind.MISSING_SOURCE,
                "complaint weak-heat",
                "hearsay");
    }

    @Test
    void anUnusedCheckIsFound() {
        only(
                problems(new KnowledgeTexts()
                        .append(
                                "checks.csv",
                                "idle-talk,Idle talk,,,,no; yes,,eye,1,H0,T,2,,yes,Chat.,,invented for the demo\n")),
                Kind.UNUSED_CHECK,
                "check idle-talk",
                "no rule asks for it");
    }

    @Test
    void aRuleThatNamesAnUnknownCheckIsFoundAndTheRestIsStillChecked() {
        var problems = problems(new KnowledgeTexts()
                .replace("causes-leak.yaml", "when: leak-place is header,", "when: leak-spot is header,")
                .replace("gates.yaml", "source: S-CO\n", "source: \"\"\n"));

        assertThat(problems)
                .extracting(KnowledgeProblem::kind)
                .containsExactly(Kind.UNKNOWN_CHECK, Kind.MISSING_SOURCE);
        assertThat(problems.get(0).where()).contains("causes-leak.yaml row 4 LK04 for header field when");
        assertThat(problems.get(0).words()).contains("leak-spot");
    }

    @Test
    void aBrokenRowIsReportedAndLeftOut() {
        only(
                problems(new KnowledgeTexts().replace("causes-weak-heat.yaml", "common: 3", "common: many")),
                Kind.REFUSED_ROW,
                "causes-weak-heat.yaml row 2 WH04",
                "field common 'many'");
        only(problems(new KnowledgeTexts().append("notes.txt", "hello")), Kind.REFUSED_ROW, "knowledge", "notes.txt");
    }
}
