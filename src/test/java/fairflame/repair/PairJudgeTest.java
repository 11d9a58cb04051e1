package fairflame.repair;

import static fairflame.repair.Visits.file;
import static fairflame.repair.Visits.ohms;
import static fairflame.repair.Visits.open;
import static fairflame.repair.Visits.word;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.PairRule;
import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.repair.PairJudgement.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pair rule: edges 100 kilohm, 1 megohm, 0.5 ohm and 5 years; invented for the demo, the rest common practice. */
class PairJudgeTest {
    private final Shop shop = SampleFolder.shop();
    private final PairRule rule = shop.book().pairs().get(0);
    private final RepairInputs inputs = RepairInputs.in(shop.jurisdiction("larkwell"));

    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({
        "22 kilohm, 31 kilohm, BY_RULE",
        "99.9 kilohm, 99.9 kilohm, BY_RULE",
        "22 kilohm, 100 kilohm, BY_RULE",
        "22 kilohm, 999 kilohm, BY_RULE",
        "999 kilohm, 22 kilohm, BY_RULE",
        "22 kilohm, 1 megohm, SINGLE_ALLOWED",
        "100 kilohm, 999 kilohm, RECOMMENDED",
        "22 kilohm, open, SINGLE_ALLOWED"
    })
    void readingsDecideWhenNothingElseSpeaksForThePair(String highLimit, String outlet, Outcome outcome) {
        assertThat(judge(favourable(highLimit, outlet), inputs.withPartYears(3)).outcome())
                .isEqualTo(outcome);
    }

    @Test
    void theSameWaterOnBothMakesItARule() {
        var judgement =
                judge(favourable("22 kilohm", "open"), inputs.withPartYears(3).stating(Set.of("water-reached-both")));

        assertThat(judgement.outcome()).isEqualTo(Outcome.BY_RULE);
        assertThat(judgement.reasons()).last().asString().contains("same water reached both");
    }

    @ParameterizedTest(name = "{0} years: {1}")
    @CsvSource({"0, SINGLE_ALLOWED", "5, SINGLE_ALLOWED", "6, RECOMMENDED"})
    void overFiveYearsBothAreRecommended(int years, Outcome outcome) {
        var file = favourable("18 kilohm", "open");

        assertThat(judge(file, inputs.withPartYears(years)).outcome()).isEqualTo(outcome);
        assertThat(judge(Visits.withHeaterYears(file, years), inputs).outcome())
                .as("the heater's age counts where the part's is not known")
                .isEqualTo(outcome);
    }

    @Test
    void anUnknownAgeIsNotAYoungOne() {
        var judgement = judge(favourable("18 kilohm", "open"), inputs);

        assertThat(judgement.outcome()).isEqualTo(Outcome.RECOMMENDED);
        assertThat(judgement.reasons()).last().asString().contains("age is not known");
    }

    @Test
    void anAgeThatACheckTellsGoesBeforeTheHeaters() {
        var aged = new PairRule(
                rule.id(),
                rule.task(),
                rule.members(),
                rule.damagedBelow(),
                rule.dampBelow(),
                rule.contactBelow(),
                new PairRule.Age(5, List.of("switch-age")),
                rule.facts(),
                rule.source());
        var file = with(
                Visits.withHeaterYears(favourable("18 kilohm", "open"), 20), Visits.years("switch-age", "2 years"));

        assertThat(judge(aged, file, inputs).outcome()).isEqualTo(Outcome.SINGLE_ALLOWED);
    }

    @Test
    void partsOfOneBatchAreRenewedTogether() {
        var judgement =
                judge(favourable("18 kilohm", "open"), inputs.withPartYears(3).stating(Set.of("same-batch")));

        assertThat(judgement.outcome()).isEqualTo(Outcome.RECOMMENDED);
        assertThat(judgement.reasons()).last().asString().contains("one batch");
    }

    @Test
    void whileTheWaterStillRunsOneAloneIsNotEnough() {
        var file = file(
                ohms("leak-high-limit", "18 kilohm", "cold"),
                open("leak-outlet", "cold"),
                open("leak-outlet", "warm"),
                ohms("contact-outlet", "0.2 ohm"),
                word("water-source", "gasket"));
        var judgement = judge(file, inputs.withPartYears(3));

        assertThat(judgement.outcome()).isEqualTo(Outcome.RECOMMENDED);
        assertThat(judgement.reasons()).last().asString().contains("not found and stopped");
    }

    @Test
    void measuredColdOnlyTheOtherIsNotProvedDry() {
        var file = file(
                ohms("leak-high-limit", "18 kilohm", "cold"),
                open("leak-outlet", "cold"),
                ohms("contact-outlet", "0.2 ohm"),
                word("water-source", "sealed"));
        var judgement = judge(file, inputs.withPartYears(3));

        assertThat(judgement.outcome()).isEqualTo(Outcome.RECOMMENDED);
        assertThat(judgement.dryness()).containsEntry("outlet-switch", Dryness.DRY_ONCE);
    }

    @ParameterizedTest(name = "contact {0}: {1}")
    @CsvSource({"0.49 ohm, SINGLE_ALLOWED", "0.5 ohm, RECOMMENDED", "open, RECOMMENDED", "not measured, RECOMMENDED"})
    void aPoorContactOfTheOtherSpeaksForThePair(String contact, Outcome outcome) {
        var file = file(
                ohms("leak-high-limit", "18 kilohm", "cold"),
                open("leak-outlet", "cold"),
                open("leak-outlet", "warm"),
                reading("contact-outlet", contact),
                word("water-source", "sealed"));

        assertThat(judge(file, inputs.withPartYears(3)).outcome()).isEqualTo(outcome);
    }

    @Test
    void oneGoodContactReadingDoesNotHideABadOne() {
        var file = with(favourable("18 kilohm", "open"), ohms("contact-outlet", "6 ohm"));

        assertThat(judge(file, inputs.withPartYears(3)).outcome()).isEqualTo(Outcome.RECOMMENDED);
    }

    @Test
    void aContactThatWasAlsoNotMeasuredOnceIsJudgedByWhatWasMeasured() {
        var file = with(favourable("18 kilohm", "open"), reading("contact-outlet", "not measured"));

        assertThat(judge(file, inputs.withPartYears(3)).outcome()).isEqualTo(Outcome.SINGLE_ALLOWED);
    }

    @Test
    void equalReadingsNameTheFirstOfThePair() {
        var equal = file(ohms("leak-high-limit", "22 kilohm"), ohms("leak-outlet", "22 kilohm"));

        assertThat(judge(equal, inputs).worst()).isEqualTo("high-limit-switch");
    }

    @Test
    void aSwitchThatIsDryColdAndWetWarmIsDamaged() {
        var file = file(open("leak-high-limit", "cold"), ohms("leak-high-limit", "19 kilohm", "warm"));

        assertThat(judge(file, inputs).dryness()).containsEntry("high-limit-switch", Dryness.DAMAGED);
    }

    @Test
    void whatWasNotMeasuredProvesNothing() {
        var nothing = new Reading("leak-outlet", new Value.NotMeasured(), "", Set.of("cold", "warm"), true, "");
        var judgement = judge(file(nothing), inputs);

        assertThat(judgement.dryness()).containsEntry("outlet-switch", Dryness.UNPROVED);
        assertThat(judgement.outcome()).isEqualTo(Outcome.RECOMMENDED);
    }

    @Test
    void theWorseOfTwoIsTheOneThatTheFindingNamesElseTheLowerReading() {
        var lowerOutlet = file(ohms("leak-high-limit", "31 kilohm"), ohms("leak-outlet", "22 kilohm"));

        assertThat(judge(lowerOutlet, inputs).worst()).isEqualTo("outlet-switch");
        assertThat(judge(rule, lowerOutlet, inputs, List.of("high-limit-switch"))
                        .worst())
                .isEqualTo("high-limit-switch");
        assertThat(judge(file(), inputs).worst()).isEqualTo("high-limit-switch");
        assertThat(judge(file(open("leak-high-limit"), ohms("leak-outlet", "22 kilohm")), inputs)
                        .worst())
                .isEqualTo("outlet-switch");
    }

    private PairJudgement judge(CaseFile file, RepairInputs with) {
        return judge(rule, file, with);
    }

    private PairJudgement judge(PairRule by, CaseFile file, RepairInputs with) {
        return judge(by, file, with, List.of());
    }

    private PairJudgement judge(PairRule by, CaseFile file, RepairInputs with, List<String> atFault) {
        var facts = KnownFacts.of(Visits.settled(Visits.cause("LD02")), file, shop, with);
        return new PairJudge(file, with, facts::has).judge(by, atFault);
    }

    /** Everything but the leak readings speaks for one alone. */
    private static CaseFile favourable(String highLimit, String outlet) {
        return file(
                with(reading("leak-high-limit", highLimit), "cold"),
                with(reading("leak-high-limit", highLimit), "warm"),
                with(reading("leak-outlet", outlet), "cold"),
                with(reading("leak-outlet", outlet), "warm"),
                ohms("contact-outlet", "0.2 ohm"),
                word("water-source", "sealed"));
    }

    private static Reading reading(String check, String value) {
        return switch (value) {
            case "open" -> open(check);
            case "not measured" -> new Reading(check, new Value.NotMeasured(), "", Set.of(), true, "");
            default -> ohms(check, value);
        };
    }

    private static Reading with(Reading reading, String condition) {
        return new Reading(reading.check(), reading.value(), reading.instrument(), Set.of(condition), true, "");
    }

    private static CaseFile with(CaseFile file, Reading more) {
        var readings = new ArrayList<>(file.readings());
        readings.add(more);
        return new CaseFile(
                file.complaint(), file.plate(), file.gates(), readings, file.leads(), file.releases(), file.pipe());
    }
}
