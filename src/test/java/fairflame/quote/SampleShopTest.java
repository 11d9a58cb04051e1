package fairflame.quote;

import static fairflame.quote.DemoShop.usd;
import static org.assertj.core.api.Assertions.assertThat;

import fairflame.catalog.SampleFolder;
import fairflame.catalog.Shop;
import fairflame.diagnosis.Candidate;
import fairflame.diagnosis.CaseFile;
import fairflame.diagnosis.Finding;
import fairflame.diagnosis.RatingPlate;
import fairflame.diagnosis.Reading;
import fairflame.diagnosis.Value;
import fairflame.gas.Fuel;
import fairflame.gas.Reconciliation;
import fairflame.quantity.Dimension;
import fairflame.quantity.Length;
import fairflame.quantity.Measure;
import fairflame.quantity.Pressure;
import fairflame.repair.PipeJob;
import fairflame.repair.RepairInputs;
import fairflame.repair.ScopeBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Acceptance cases priced with the shipped sample shop, in a place that taxes parts and consumables at 7.25 % on the
 * document. Prices are invented for the demo; hours and cents were worked by hand.
 */
class SampleShopTest {
    private static final Shop SHOP = SampleFolder.shop();
    private static final RepairInputs LARKWELL = RepairInputs.in(SHOP.jurisdiction("larkwell"));

    private static Quote quote(CaseFile file, RepairInputs inputs, String cause, String... devices) {
        var candidate = new Candidate(
                cause,
                "cause " + cause,
                "Plain words.",
                Candidate.Standing.SETTLED,
                List.of(),
                List.of(),
                List.of(),
                "the deciding check",
                List.of(devices));
        var finding = new Finding.Settled(List.of(candidate), List.of(candidate), List.of());
        var request = DemoQuotes.request(inputs.place(), PricingInputs.inZone("standard"));
        return new Quoting(SHOP, request).repair(finding, ScopeBuilder.plan(finding, file, SHOP, inputs));
    }

    private static CaseFile file(Optional<Reconciliation> pipe, Reading... readings) {
        var plate = new RatingPlate(
                "gas pool heater",
                Fuel.NATURAL,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new CaseFile("drops-out", plate, Map.of(), List.of(readings), List.of(), List.of(), pipe);
    }

    private static Reading ohms(String check, String value, String... conditions) {
        var measured = new Value.Measured(Measure.parse(Dimension.RESISTANCE, value));
        return new Reading(check, measured, "ohmmeter", Set.of(conditions), true, "");
    }

    private static final CaseFile BOTH_WET = file(
            Optional.empty(),
            ohms("leak-high-limit", "22 kilohm", "cold"),
            ohms("leak-outlet", "31 kilohm", "cold"),
            ohms("contact-high-limit", "6 ohm"),
            ohms("contact-outlet", "4 ohm"));

    @Test
    void bothSwitchesWet() {
        var quote = quote(BOTH_WET, LARKWELL, "LD01", "high-limit-switch", "outlet-switch");
        var both = quote.choice("both");
        assertThat(both.hours()).isEqualByComparingTo("1.35");
        assertThat(both.totals().total()).isEqualTo(usd("389.86"));
        assertThat(quote.choice("one").totals().total()).isEqualTo(usd("293.80"));
        assertThat(String.join(" ", both.arithmetic())).contains("0.316");
        assertThat(quote.notes(both))
                .extracting(Note::rule)
                .contains("N-NOBYPASS", "N-WATER", "N-WATERSRC", "N-HOT", "N-LOCAL", "N-HIDDEN")
                .doesNotContain("N-PERMIT", "N-GASFIT");
        assertThat(both.tests()).containsExactly("B", "D", "E", "H");
    }

    @Test
    void gasLineTooSmall() {
        var zero = Pressure.ofInchesWater(0);
        var explains = new Reconciliation(
                Reconciliation.Verdict.EXPLAINS, zero, zero, zero, zero, List.of(), "computed against measured");
        var line = new PipeJob(
                "larger-line",
                "Larger gas line, 1-1/4 in",
                "steel-schedule-40",
                "1-1/4",
                "1-1/4",
                Length.ofFeet(84),
                Map.of("ell-90", 8, "coupling", 6),
                false,
                new PipeJob.Sizing("At 388 ft3/h 1-1/4 in loses 0.6 in w.c. over 110 ft.", "low-pressure equation"),
                "",
                List.of());
        var quote = quote(file(Optional.of(explains)), LARKWELL.withPipes(List.of(line)), "LD03");
        var choice = quote.choices().get(0);
        assertThat(choice.hours()).isEqualByComparingTo("13.70");
        assertThat(choice.lines())
                .filteredOn(row -> row.kind() == LineKind.LABOUR)
                .singleElement()
                .satisfies(row -> assertThat(row.net()).isEqualTo(usd("1986.50")));
        assertThat(choice.lines())
                .filteredOn(row -> row.kind() == LineKind.PERMIT_FEE)
                .singleElement()
                .satisfies(row -> assertThat(row.net()).isEqualTo(usd("120.00")));
        assertThat(quote.notes(choice))
                .filteredOn(Note::boxed)
                .extracting(Note::rule)
                .contains("N-GASFIT", "N-PERMIT", "N-TEST");
        assertThat(quote.notes(choice)).extracting(Note::rule).contains("N-UTIL", "N-CO");
        assertThat(choice.duties().pressureTest()).isTrue();
    }

    @Test
    void dirtyFlameSensor() {
        var quote = quote(file(Optional.empty()), LARKWELL, "LD05", "flame-sensor");
        var choice = quote.choices().get(0);
        assertThat(choice.hours()).isEqualByComparingTo("0.65");
        assertThat(choice.lines()).extracting(Line::net).containsExactly(usd("94.25"), usd("50.75"), usd("89.00"));
        assertThat(choice.totals().total()).isEqualTo(usd("234.00"));
    }

    @Test
    void everySampleNoteThatATaskAsksForIsInTheBook() {
        var known = DemoQuotes.NOTES.notes().stream().map(NoteRule::id).toList();
        for (var task : SHOP.tasks()) {
            assertThat(known).as(task.id()).containsAll(task.notes());
        }
    }

    @Test
    void aPlaceThatIsNotInTheFilesIsTreatedCautiously() {
        var elsewhere = RepairInputs.in(SHOP.jurisdiction("nowhere-in-the-list"));
        var quote = quote(BOTH_WET, elsewhere, "LD01", "high-limit-switch", "outlet-switch");
        assertThat(quote.assumed())
                .singleElement()
                .asString()
                .contains("the cautious rule is assumed")
                .contains("permits");
        assertThat(quote.notes()).extracting(Note::rule).contains("N-PERMIT", "N-CANCEL");
        assertThat(quote.choice("both").deposit()).isEqualTo(usd("0.00"));
    }
}
