package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import fairflame.quantity.Temperature;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Sizing examples that the code and others have published. */
class WorkedExamplesTest {
    private static Map<String, String> sizes(Sizing sizing) {
        var sizes = new TreeMap<String, String>();
        sizing.segments()
                .forEach(size -> sizes.put(
                        size.id(),
                        (int) size.flow().cubicFeetPerHour() + " cfh, "
                                + Figures.feet(size.lengthUsed()) + ", "
                                + size.required().map(Pipe::size).orElse("none")));
        return sizes;
    }

    /**
     * 2018 IFGC example A.7.1 (NFPA 54 C.7.1), longest length: Schedule 40, 0.5 in w.c., 60 ft to outlet A. Sizes of A, B
     * and the three sections are printed there; C and D follow from the same row.
     */
    @Test
    void longestLengthExampleOfTheCode() {
        var layout = Sites.site()
                .pipe("3", "m", "x", "1", 20)
                .pipe("1", "x", "y", "3/4", 20)
                .pipe("2", "x", "z", "3/4", 15)
                .pipe("A", "y", "a", "1/2", 20)
                .pipe("B", "y", "b", "3/4", 10)
                .pipe("C", "z", "c", "1/2", 5)
                .pipe("D", "z", "d", "3/4", 10)
                .appliance("a", "a", 35_000, "4inwc")
                .appliance("b", "b", 75_000, "4inwc")
                .appliance("c", "c", 35_000, "4inwc")
                .appliance("d", "d", 100_000, "4inwc")
                .build();
        var sizing = Sizing.of(Sites.TABLES, layout, Method.LONGEST_LENGTH);
        assertEquals(
                Map.of(
                        "A", "35 cfh, 60 ft, 1/2",
                        "B", "75 cfh, 60 ft, 3/4",
                        "1", "110 cfh, 60 ft, 3/4",
                        "2", "135 cfh, 60 ft, 3/4",
                        "3", "245 cfh, 60 ft, 1",
                        "C", "35 cfh, 60 ft, 1/2",
                        "D", "100 cfh, 60 ft, 3/4"),
                sizes(sizing));
        assertThat(sizing.enough()).isTrue();
        assertThat(sizing.segment("3").capacity().orElseThrow().by()).isEqualTo("table IFGC 402.4(2), row of 60 ft");
    }

    /**
     * 2018 IFGC example A.7.3 (2015: A.6.3), branch length: semirigid copper, 1.0 in w.c. Lengths, loads and sizes of A to
     * D as printed; the size of E is from memory, not checked.
     */
    @Test
    void branchLengthExampleOfTheCode() {
        var none = Fittings.none();
        var copper = new Pipe(Material.COPPER_K, "1");
        var layout = Sites.site()
                .drop("1inwc")
                .pipe("A", "m", "x", copper, 20, none)
                .pipe("B", "x", "b", copper, 10, none)
                .pipe("C", "x", "c", copper, 30, none)
                .pipe("D", "x", "d", copper, 10, none)
                .pipe("E", "x", "e", copper, 10, none)
                .appliance("range", "b", 75_000, "4inwc")
                .appliance("dryer", "c", 30_000, "4inwc")
                .appliance("water-heater", "d", 35_000, "4inwc")
                .appliance("furnace", "e", 80_000, "4inwc")
                .build();
        assertEquals(
                Map.of(
                        "A", "220 cfh, 50 ft, 1",
                        "B", "75 cfh, 30 ft, 1/2",
                        "C", "30 cfh, 50 ft, 3/8",
                        "D", "35 cfh, 30 ft, 3/8",
                        "E", "80 cfh, 30 ft, 1/2"),
                sizes(Sizing.of(Sites.TABLES, layout, Method.BRANCH_LENGTH)));
    }

    /** Pressure drop per 100 ft, 2015 IFGC/IRC Table A.3.4, rows 0.3 and 0.5: those tables at 100 ft, kBtu/h at 1,000. */
    @Test
    void theDropPerHundredFeetTableIsReproduced() {
        var expected =
                Map.of("0.3", new int[] {38, 79, 148, 304, 455, 877}, "0.5", new int[] {50, 104, 195, 400, 600, 1160});
        var sizes = new String[] {"1/2", "3/4", "1", "1-1/4", "1-1/2", "2"};
        expected.forEach((drop, row) -> {
            for (int i = 0; i < sizes.length; i++) {
                var run = new Run(
                        Gas.ofCode(Fuel.NATURAL),
                        Sites.steel(sizes[i]),
                        Length.ofFeet(100),
                        Pressure.ofInchesWater(7),
                        Pressure.parse(drop + "inwc"));
                assertEquals(row[i], Capacity.of(Sites.TABLES, run).heat().btuPerHour() / 1000, drop + " " + sizes[i]);
            }
        });
    }

    /** Acceptance case: 374 cfh through 110 ft equivalent of 3/4 in steel loses 5.8 in w.c., through 1-1/4 in 0.5. */
    @Test
    void theHeaterLineThatIsTooSmallLosesWhatWasMeasured() {
        assertThat(lost("3/4", 374)).isCloseTo(5.8, within(0.05));
        assertThat(lost("1-1/4", 374)).isCloseTo(0.5, within(0.05));
        assertThat(lost("1", 388)).isCloseTo(1.94, within(0.05));
    }

    private static double lost(String size, double cfh) {
        return new PressureLoss(Sites.TABLES, Gas.ofCode(Fuel.NATURAL))
                .of(FlowEquation.LOW, Sites.steel(size), Length.ofFeet(110), cfh);
    }

    /** 2018 IRC Table A.2.2: a run of steel fittings, printed feet added by hand. */
    @Test
    void equivalentLengthsArePrintedOnes() {
        assertEquals(
                4 * 2.06 + 4.12 + 0.96,
                Sites.TABLES
                        .equivalentLength(Sites.steel("3/4"), Map.of("ell-90", 4, "tee-branch", 1, "ell-45", 1))
                        .feet(),
                1e-9);
        // Copper has no printed lengths: the ratio of the table, 30 bores for an ell, 0.785 in of type L
        assertEquals(
                30 * 0.785 / 12,
                Sites.TABLES
                        .equivalentLength(new Pipe(Material.COPPER_L, "3/4"), Map.of("ell-90", 1))
                        .feet(),
                1e-9);
        assertEquals(
                2 * 1.3,
                Sites.TABLES
                        .equivalentLength(new Pipe(Material.CSST, "25"), Map.of("ell-90", 2))
                        .feet(),
                1e-9);
    }

    /** The printed lengths are the ratios of the same table times the bore, to the last printed digit. */
    @Test
    void printedEquivalentLengthsAgreeWithTheirRatios() {
        var ratio = Map.of("ell-45", 14, "ell-90", 30, "return-180", 67, "tee-branch", 60);
        for (var pipe : Sites.TABLES.sizes(Material.STEEL_SCHEDULE_40)) {
            if (!pipe.size().equals("3/8")) {
                ratio.forEach((fitting, bores) -> assertThat(Sites.TABLES
                                .equivalentLength(pipe, Map.of(fitting, 1))
                                .feet())
                        .as("%s %s", pipe.size(), fitting)
                        .isCloseTo(
                                bores * Sites.TABLES.bore(pipe).orElseThrow().feet(),
                                org.assertj.core.data.Percentage.withPercentage(1)));
            }
        }
    }

    /** 2018 IFGC A.7.3 takes the narrower bore of type K: a type L answer has to say what the code's table allows. */
    @Test
    void typeLCopperTellsWhatTheCodesTableAllows() {
        var run = new Run(
                Gas.ofCode(Fuel.NATURAL),
                new Pipe(Material.COPPER_L, "3/4"),
                Length.ofFeet(50),
                Pressure.ofInchesWater(7),
                Pressure.ofInchesWater(1));
        assertThat(Capacity.of(Sites.TABLES, run).notes())
                .anySatisfy(note -> assertThat(note).contains("type K", "169"));
    }

    /** 2018 IFGC example A.7.5 (2015: A.6.5): air at 20 psig and 70 F, cooled to 40 F, shows 18 psig. */
    @Test
    void aTightLineUnderTestShowsLessWhenItCools() {
        var after = AirTest.after(Pressure.ofPsi(20), Temperature.ofFahrenheit(70), Temperature.ofFahrenheit(40));
        assertEquals(18.0, after.psi(), 0.05);
        assertEquals(
                20.0,
                AirTest.after(after, Temperature.ofFahrenheit(40), Temperature.ofFahrenheit(70))
                        .psi(),
                1e-9);
        assertThatThrownBy(() ->
                        AirTest.after(Pressure.ofPsi(0.1), Temperature.ofFahrenheit(100), Temperature.ofFahrenheit(0)))
                .hasMessageContaining("test pressure");
        assertThatThrownBy(() ->
                        AirTest.after(Pressure.ofPsi(3), Temperature.ofFahrenheit(400), Temperature.ofFahrenheit(40)))
                .hasMessageContaining("-40 to 150 F");
    }
}
