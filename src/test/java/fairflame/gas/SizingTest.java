package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SizingTest {
    private static Sizing sized(Sites site, Method method) {
        return Sizing.of(Sites.TABLES, site.build(), method);
    }

    private static String required(Sizing sizing, String segment) {
        return sizing.segment(segment).required().map(Pipe::size).orElse("none");
    }

    @Test
    void aSegmentThatIsTooSmallIsToldWithWhatItCarriesAndWhatItNeeds() {
        var sizing = sized(
                Sites.site().pipe("s", "m", "pad", "3/4", 60).appliance("heater", "pad", 400_000, "4inwc"),
                Method.LONGEST_LENGTH);
        var size = sizing.segment("s");
        assertThat(size.enough()).isFalse();
        assertThat(sizing.enough()).isFalse();
        // 402.4(2), row of 60 ft: 3/4 carries 137, 1 carries 257, 1-1/4 carries 528
        assertEquals(137, size.carries().flow().cubicFeetPerHour());
        assertEquals("1-1/4", required(sizing, "s"));
        assertEquals(528, size.capacity().orElseThrow().flow().cubicFeetPerHour());
        assertEquals("3/4", size.installed().size());
    }

    @Test
    void aLoadEqualToTheCapacityIsCarried() {
        var site = Sites.site().pipe("s", "m", "pad", "3/4", 60).appliance("heater", "pad", 137_000, "4inwc");
        assertThat(sized(site, Method.LONGEST_LENGTH).enough()).isTrue();
        assertEquals("3/4", required(sized(site, Method.LONGEST_LENGTH), "s"));
    }

    @Test
    void noSizeIsNamedWhereNoneCarriesTheLoad() {
        var site = Sites.site().pipe("s", "m", "pad", "3/4", 500).appliance("boiler", "pad", 40_000_000, "4inwc");
        var size = sized(site, Method.LONGEST_LENGTH).segment("s");
        assertThat(size.required()).isEmpty();
        assertThat(size.capacity()).isEmpty();
        assertThat(size.enough()).isFalse();
    }

    @Test
    void fewFittingsAreInTheTablesAndFourAreNot() {
        var three = Sites.site()
                .pipe("s", "m", "pad", Sites.steel("1"), 50, Fittings.counted(Map.of("ell-90", 3)))
                .appliance("heater", "pad", 200_000, "4inwc");
        assertEquals(
                50,
                sized(three, Method.LONGEST_LENGTH).segment("s").lengthUsed().feet());
        var four = Sites.site()
                .pipe("s", "m", "pad", Sites.steel("1"), 50, Fittings.counted(Map.of("ell-90", 4)))
                .appliance("heater", "pad", 200_000, "4inwc");
        assertThat(sized(four, Method.LONGEST_LENGTH).segment("s").lengthUsed().feet())
                .isCloseTo(50 + 4 * 2.62, within(1e-9));
    }

    @Test
    void fittingsAreMeasuredInTheSizeThatIsNeeded() {
        var site = Sites.site()
                .pipe("s", "m", "pad", Sites.steel("3/4"), 84, Fittings.counted(Map.of("ell-90", 14)))
                .appliance("heater", "pad", 400_000, "4inwc");
        var size = sized(site, Method.LONGEST_LENGTH).segment("s");
        // 1-1/4 carries 354 at 125 ft: too little; 1-1/2: 14 ells of 4.02 ft
        assertEquals("1-1/2", size.required().orElseThrow().size());
        assertThat(size.lengthUsed().feet()).isCloseTo(84 + 14 * 4.02, within(1e-9));
    }

    @Test
    void estimatedFittingsGrowWithTheBore() {
        var site = Sites.site()
                .drop("1inwc")
                .pipe("s", "m", "pad", Sites.steel("3/4"), 84, Fittings.estimated(fairflame.quantity.Length.ofFeet(26)))
                .appliance("heater", "pad", 400_000, "4inwc");
        var size = sized(site, Method.LONGEST_LENGTH).segment("s");
        assertEquals("1-1/4", size.required().orElseThrow().size());
        assertThat(size.lengthUsed().feet()).isCloseTo(84 + 26 * 1.380 / 0.824, within(1e-9));
    }

    private static Sites branched() {
        return Sites.site()
                .pipe("a", "m", "x", "1", 20)
                .pipe("b", "x", "near", "1/2", 10)
                .pipe("c", "x", "y", "1", 30)
                .pipe("d", "y", "far", "3/4", 50)
                .pipe("e", "y", "mid", "1/2", 5)
                .appliance("dryer", "near", 35_000, "4inwc")
                .appliance("heater", "far", 120_000, "4inwc")
                .appliance("grill", "mid", 30_000, "4inwc");
    }

    @Test
    void longestLengthIsOneForAllAndBranchLengthIsEachRunsOwn() {
        var longest = sized(branched(), Method.LONGEST_LENGTH);
        longest.segments().forEach(size -> assertEquals(100, size.lengthUsed().feet()));
        var branch = sized(branched(), Method.BRANCH_LENGTH);
        assertEquals(100, branch.segment("a").lengthUsed().feet());
        assertEquals(100, branch.segment("c").lengthUsed().feet());
        assertEquals(100, branch.segment("d").lengthUsed().feet());
        assertEquals(30, branch.segment("b").lengthUsed().feet());
        assertEquals(55, branch.segment("e").lengthUsed().feet());
    }

    @Test
    void hybridSizesTheElevatedPartToItsFarthestRegulatorAndEachLowPartFromItsOwn() {
        var site = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("t", "m", "x", "1/2", 60)
                .pipe("p", "x", "pad", "1/2", 25)
                .pipe("h", "x", "house", "3/4", 30)
                .pipe("k", "house", "kitchen", "1/2", 15)
                .regulator("RP", "heater", "8inwc", "500cfh")
                .regulator("RH", "h", "7inwc", "300cfh")
                .appliance("heater", "pad", 400_000, "4inwc")
                .appliance("furnace", "house", 80_000, "4inwc")
                .appliance("range", "kitchen", 60_000, "4inwc");
        var sizing = sized(site, Method.HYBRID);
        assertEquals(85, sizing.segment("t").lengthUsed().feet());
        assertEquals(85, sizing.segment("p").lengthUsed().feet());
        assertEquals(45, sizing.segment("h").lengthUsed().feet());
        assertEquals(45, sizing.segment("k").lengthUsed().feet());
        // 402.4(5) row of 90 ft: 1/2 carries 502, 3/4 1010; the trunk's 540 need 3/4, the pad's 400 only 1/2
        assertEquals("3/4", required(sizing, "t"));
        assertEquals("1/2", required(sizing, "p"));
        assertThat(sizing.segment("p").capacity().orElseThrow().by()).isEqualTo("table IFGC 402.4(5), row of 90 ft");
        // 402.4(2) row of 50 ft: 3/4 carries 151
        assertEquals("3/4", required(sizing, "h"));
        assertEquals("1/2", required(sizing, "k"));
        assertThat(sizing.segment("k").drop().inchesWater()).isEqualTo(0.5);
        assertThat(sizing.segment("t").drop().psi()).isCloseTo(1, within(1e-12));
    }

    @Test
    void hybridWithoutARegulatorIsRefused() {
        assertThatThrownBy(() -> sized(branched(), Method.HYBRID))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessageContaining("line regulator");
        assertEquals(Method.LONGEST_LENGTH, Method.usualFor(branched().build()));
    }

    @Test
    void methodsAreReadByName() {
        assertEquals(Method.LONGEST_LENGTH, Method.parse("longest-length"));
        assertEquals(Method.BRANCH_LENGTH, Method.parse("Branch-Length"));
        assertEquals(Method.HYBRID, Method.parse("hybrid"));
        assertThatThrownBy(() -> Method.parse("guess")).hasMessageContaining("longest-length, branch-length, hybrid");
        assertEquals("longest length", Method.LONGEST_LENGTH.words());
    }

    @Test
    void diversityCountsOnlyInSharedPipeAndSaysItsReason() {
        var reason = "engineer's letter: furnace and heater never together";
        var sizing = sized(branched().diversity(0.8, reason), Method.LONGEST_LENGTH);
        assertThat(sizing.segment("a").flow().cubicFeetPerHour()).isCloseTo(0.8 * 185, within(1e-9));
        assertThat(sizing.segment("d").flow().cubicFeetPerHour()).isEqualTo(120);
        // 0.8 x 150 = 120, no less than the heater alone
        assertThat(sizing.segment("c").flow().cubicFeetPerHour()).isCloseTo(120, within(1e-9));
        assertThat(sizing.notes()).contains("shared pipe is sized for 80.0 % of the connected load: " + reason);
    }

    @Test
    void sharedPipeNeverCountsLessThanItsLargestAppliance() {
        var sizing = sized(branched().diversity(0.3, "a reason that is long enough"), Method.LONGEST_LENGTH);
        assertEquals(120, sizing.segment("a").flow().cubicFeetPerHour());
        assertEquals(120, sizing.segment("c").flow().cubicFeetPerHour());
    }

    @Test
    void withoutDiversityNothingIsTakenOff() {
        var sizing = sized(branched(), Method.LONGEST_LENGTH);
        assertEquals(185, sizing.segment("a").flow().cubicFeetPerHour());
        assertThat(sizing.notes()).noneMatch(note -> note.contains("connected load"));
    }

    @Test
    void aLoadOverTheMetersRatingIsAnAnswer() {
        var meter = new Source(
                Source.Kind.METER,
                "m",
                fairflame.quantity.Pressure.parse("7inwc"),
                Optional.empty(),
                Optional.of(GasFlow.parse("184cfh")));
        var check = sized(branched().from(meter), Method.LONGEST_LENGTH).supply();
        assertEquals(SupplyCheck.Answer.OVER_RATING, check.answer());
        assertThat(check.words()).contains("185").contains("184").contains("ask the gas supplier");
        assertEquals(185, check.load().cubicFeetPerHour());
    }

    @Test
    void anUnreadRatingIsAskedForAndAnEqualOneIsEnough() {
        var none = new Source(
                Source.Kind.TANK_REGULATOR,
                "m",
                fairflame.quantity.Pressure.parse("7inwc"),
                Optional.empty(),
                Optional.empty());
        var unknown = SupplyCheck.of(branched().from(none).build());
        assertEquals(SupplyCheck.Answer.RATING_UNKNOWN, unknown.answer());
        assertThat(unknown.words()).contains("tank regulator is not known: ask the gas supplier");
        var equal = new Source(
                Source.Kind.METER,
                "m",
                fairflame.quantity.Pressure.parse("7inwc"),
                Optional.empty(),
                Optional.of(GasFlow.parse("185cfh")));
        assertEquals(
                SupplyCheck.Answer.ENOUGH,
                SupplyCheck.of(branched().from(equal).build()).answer());
    }

    @Test
    void csstIsSizedByItsTableAlone() {
        var site = Sites.site()
                .pipe("s", "m", "pad", new Pipe(Material.CSST, "19"), 55, Fittings.none())
                .appliance("heater", "pad", 150_000, "4inwc");
        var sizing = sized(site, Method.LONGEST_LENGTH);
        var carried = Capacity.forSizing(
                Sites.TABLES,
                new Run(
                        Gas.ofCode(Fuel.NATURAL),
                        sizing.segment("s").required().orElseThrow(),
                        fairflame.quantity.Length.ofFeet(55),
                        fairflame.quantity.Pressure.parse("7inwc"),
                        fairflame.quantity.Pressure.parse("0.5inwc")));
        assertThat(carried.flow().cubicFeetPerHour()).isGreaterThanOrEqualTo(150);
        assertThat(sizing.segment("s").capacity().orElseThrow().by()).contains("402.4(15), row of 60 ft");
    }

    @Test
    void propaneCsstPassesOverTheSizeThatHasNoTrustworthyColumn() {
        var site = Sites.site()
                .of(Gas.ofCode(Fuel.PROPANE))
                .from(Sites.meter("11inwc"))
                .pipe("s", "m", "pad", new Pipe(Material.CSST, "31"), 60, Fittings.none())
                .appliance("heater", "pad", 250_000, "9inwc");
        // Natural rows of 60 ft times 0.63: EHD 31 carries 96 of the 100 cfh, EHD 37 is left out
        assertEquals("39", required(sized(site, Method.LONGEST_LENGTH), "s"));
    }

    @Test
    void csstBeyondItsTableIsRefusedWithTheSegmentsName() {
        var site = Sites.site()
                .pipe("long", "m", "pad", new Pipe(Material.CSST, "19"), 400, Fittings.none())
                .appliance("heater", "pad", 50_000, "4inwc");
        assertThatThrownBy(() -> sized(site, Method.LONGEST_LENGTH))
                .hasMessageStartingWith("segment long: length of CSST of EHD 19 '400 ft' is refused");
    }
}
