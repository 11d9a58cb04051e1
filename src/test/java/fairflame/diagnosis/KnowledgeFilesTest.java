package fairflame.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairflame.Refusal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KnowledgeFilesTest {
    private static void refused(KnowledgeTexts texts, String... parts) {
        assertThatThrownBy(() -> Knowledge.parse(texts.files()))
                .isInstanceOf(Refusal.class)
                .satisfies(refusal ->
                        assertThat(refusal.getMessage()).contains(parts).doesNotContain("\n"));
    }

    @Test
    void theShippedFilesAreRead() {
        var knowledge = Knowledge.shipped();

        assertThat(knowledge.complaints())
                .extracting(Complaint::id)
                .containsExactly(
                        "drops-out",
                        "no-ignition-try",
                        "no-flame",
                        "trips-after-minutes",
                        "weak-heat",
                        "fault-light",
                        "soot-or-rollout",
                        "leak");
        assertThat(knowledge.gates())
                .extracting(Gate::id)
                .startsWith("G1", "G2", "G3", "G4", "G5", "G6", "G7", "G8", "G9");
        assertThat(knowledge.causes()).hasSizeGreaterThan(60);
        assertThat(knowledge.checks()).hasSizeGreaterThan(140);
        assertThat(knowledge.instruments()).isNotEmpty();
        assertThat(knowledge.circumstances()).isNotEmpty();
        assertThat(knowledge.sources()).isNotEmpty();
        assertThat(knowledge.instrument("u-tube").speed()).isEqualTo(Instrument.Speed.FAST);
        assertThat(knowledge.complaint("leak").plain()).isNotEmpty();
        assertThat(knowledge.source("S-CO").orElseThrow().document()).contains("carbon monoxide");
        assertThat(knowledge.source("S-NOWHERE")).isEmpty();
        assertThat(knowledge.cause("LD01").orElseThrow().also()).contains("TM05");
        assertThat(knowledge.cause("XX99")).isEmpty();
        assertThat(knowledge.causesOf("leak"))
                .extracting(Cause::id)
                .contains("LK01", "LK06")
                .doesNotContain("LD01");
    }

    @Test
    void everyFaultOfTheTradeTableStandsInTheKnowledge() {
        var rows = "LD01 LD02 LD03 LD04 LD05 LD06 LD07 LD08 LD09 LD10 LD11 LD12 LD13 LD14 LD15 LD16 "
                + "NI01 NI02 NI03 NI04 NI05 NI06 NI07 NI08 NI09 NI10 NI11 "
                + "AF01 AF02 AF03 AF04 AF05 AF06 AF07 AF08 AF09 AF10 "
                + "TM01 TM02 TM03 TM04 TM05 TM06 TM07 TM08 TM09 WH01 WH02 WH03 WH04 WH05 WH06 WH07 "
                + "LO01 LO02 LO03 LO04 SR01 SR02 SR03 SR04 SR05 SR06 LK01 LK02 LK03 LK04 LK05 LK06";
        var named = Knowledge.shipped().causes().stream()
                .flatMap(cause -> Stream.concat(Stream.of(cause.id()), cause.also().stream()))
                .toList();

        assertThat(named).contains(rows.split(" "));
    }

    @Test
    void aShopMayAddAFileOfItsOwn() {
        var texts = new KnowledgeTexts().append("causes-ours.yaml", """
                - id: OURS1
                  title: Frozen hose
                  plain: "A hose is frozen."
                  complaints: [drops-out]
                  common: 1
                  remedy: "Thaw it."
                  source: invented for the demo
                  decides:
                    - {id: wet, when: air-hose is wet, words: "The hose is wet.", rests-on: look at the hose, source: invented for the demo}
                """);

        assertThat(Knowledge.parse(texts.files()).cause("OURS1")).isPresent();
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
        pressure inwc,0 to 60,5 to 14  | pressure bananas,0 to 60,5 to 14  | unit of pressure
        pressure inwc,0 to 60,5 to 14  | inwc,0 to 60,5 to 14              | a kind and a unit
        pressure inwc,0 to 60,5 to 14  | pressure inwc,60 to 0,5 to 14     | lower end first
        pressure inwc,0 to 60,5 to 14  | pressure inwc,much,5 to 14        | such as '0 to 60'
        pressure inwc,0 to 60,5 to 14  | ,0 to 60,5 to 14                  | exactly one of the two
        """)
    void aCheckThatCannotBeReadIsRefusedWithItsRow(String from, String to, String expected) {
        refused(new KnowledgeTexts().replace("checks.csv", from, to), "checks.csv row", "gas", expected);
    }

    @ParameterizedTest(name = "{1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
        checks.csv          | 1,H1,T,1,,yes             | 1,H7,T,1,,yes               | hazard 'H7'
        checks.csv          | 1,H1,T,1,,yes             | 1,H1,X,1,,yes               | who 'X'
        checks.csv          | 1,H1,T,1,,yes             | 0,H1,T,1,,yes               | field minutes '0'
        checks.csv          | 1,H1,T,1,,yes             | x,H1,T,1,,yes               | field minutes 'x'
        checks.csv          | 1,H1,T,1,,yes             | 1,H1,T,99,,yes              | field step '99'
        checks.csv          | 1,H1,T,1,,yes             | 1,H1,T,1,nothing,yes        | reference 'nothing'
        checks.csv          | 1,H1,T,1,,yes             | 1,H1,T,1,gas-smell,yes      | no check that comes after itself
        checks.csv          | 1,H1,T,1,,yes             | 1,H1,T,1,,maybe             | field told 'maybe'
        checks.csv          | no; yes,no,eye            | no; yes,perhaps,eye         | good word 'perhaps'
        checks.csv          | no; yes,no,eye            | no; yes,no,ears             | instrument 'ears'
        instruments.csv     | U-tube water column,fast  | U-tube water column,quick   | speed 'quick'
        complaints.csv      | G2; G3; G8                | G2; G77                     | reference 'G77'
        gates.yaml          | gas-smell is yes          | gas-smell is perhaps        | word 'perhaps'
        gates.yaml          | minutes: 1                | minutes: many               | field minutes 'many'
        gates.yaml          | question: Does            | color: red                  | field 'color'
        causes-leak.yaml    | common: 2                 | common: 9                   | field common '9'
        causes-leak.yaml    | complaints: [leak]        | complaints: [rust]          | complaint 'rust'
        causes-leak.yaml    | complaints: [leak]        | only-with: [ZZ1]            | reference 'ZZ1'
        causes-leak.yaml    | - id: LK02                | - id: LK01                  | id 'LK01'
        causes-leak.yaml    | weight: 4                 | weight: 40                  | field weight '40'
        causes-leak.yaml    | weight: 4                 | weight: 4, extra: 1         | field 'extra'
        causes-leak.yaml    | rests-on: leak test       | rests: leak test            | field 'rests'
        doubts.yaml         | reading: gas-firing[slow] | reading: gas-firing[blue]   | tag 'blue'
        contradictions.yaml | blocks: [LD01, LD02]      | blocks: [LD01, ZZ9]         | reference 'ZZ9'
        verdicts.yaml       | verdict: doubted          | verdict: splendid           | verdict 'splendid'
        verdicts.yaml       | - id: gas-static          | - id: gas-statics           | check 'gas-statics'
        verdicts.yaml       | low: plate.inlet-minimum  | low: plate.inlet            | plate field 'inlet'
        """)
    void whatIsWrongIsRefusedWithFileAndRow(String file, String from, String to, String expected) {
        var texts = new KnowledgeTexts().replace(file, from, to);

        assertThatThrownBy(() -> Knowledge.parse(texts.files()))
                .isInstanceOf(Refusal.class)
                .satisfies(refusal ->
                        assertThat(refusal.getMessage()).contains(expected).doesNotContain("\n"));
    }

    @Test
    void aMissingFileAndAStrangeNameAreRefused() {
        refused(new KnowledgeTexts().without("gates.yaml"), "knowledge file", "gates.yaml");
        refused(new KnowledgeTexts().append("Causes.txt", "x"), "knowledge file 'Causes.txt'", "causes.yaml");
        refused(new KnowledgeTexts().append("checks.yaml", "[]"), "knowledge file 'checks.yaml'");
    }

    @Test
    void brokenTextIsRefusedWithFileAndLine() {
        refused(new KnowledgeTexts().append("gates.yaml", "\n  - {id: [}\n"), "gates.yaml line");
        refused(new KnowledgeTexts().append("causes-x.yaml", "id: 3"), "causes-x.yaml", "a list of rows");
        refused(new KnowledgeTexts().append("causes-x.yaml", "- 3"), "causes-x.yaml", "fields with names");
        refused(new KnowledgeTexts().append("causes-x.yaml", "- {id: A, id: B}"), "causes-x.yaml");
        refused(new KnowledgeTexts().append("sources.csv", "only,two\n"), "sources.csv");
        refused(new KnowledgeTexts().append("causes-x.yaml", "- {id: A, title: [x], plain: x}"), "one text");
        refused(
                new KnowledgeTexts().append("causes-x.yaml", "- {id: A, title: x, plain: x, common: 1, for: x}"),
                "a list");
        refused(new KnowledgeTexts().append("causes-x.yaml", "- {id: A, plain: x}"), "field title", "text");
    }

    @Test
    void aRuleWithoutConditionsIsRefused() {
        refused(
                new KnowledgeTexts()
                        .append(
                                "causes-x.yaml",
                                "- {id: A, title: x, plain: x, common: 1, for: [{id: a, when: [], words: y}]}"),
                "causes-x.yaml row 1 A for a",
                "one condition or more");
    }

    @Test
    void twoRulesOfOneNameAreRefused() {
        refused(
                new KnowledgeTexts()
                        .append(
                                "causes-x.yaml",
                                "- {id: A, title: x, plain: x, common: 1, for: [{id: a, when: soot is wet, words: y},"
                                        + " {id: a, when: soot is dry, words: y}]}"),
                "rule 'A/for/a'");
    }
}
