package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables that a shop adds, and texts that cannot be tables. */
class GasTablesTest {
    private static final String HEAD = "table,edition,gas,inlet,drop,material,size,length_ft,capacity_cfh,source\n";
    private static final GasTables TABLES = GasTables.shipped();

    private static Capacity capacity(GasTables tables, String gas, Pipe pipe, double feet, String inlet, String drop) {
        return Capacity.of(
                tables,
                new Run(
                        Gas.ofCode(Fuel.parse(gas)),
                        pipe,
                        Length.ofFeet(feet),
                        Pressure.parse(inlet),
                        Pressure.parse(drop)));
    }

    @Test
    void aShopsTableForNewConditionsIsUsed() {
        // 10 to 30 ft of 3/4 in type K at 0.5 in w.c.: figures invented for the test, near the equation's
        var tables = TABLES.withShop("own.csv", HEAD + """
                K1,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,10,275,invented for the test
                K1,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,20,189,invented for the test
                """);
        var pipe = new Pipe(Material.COPPER_K, "3/4");
        var row = capacity(tables, "natural", pipe, 20, "7inwc", "0.5inwc");
        assertEquals("table K1, row of 20 ft", row.by());
        assertEquals(189, row.flow().cubicFeetPerHour());
        assertThat(row.notes()).contains("IFGC 2012-2018; row seen in: invented for the test");
        // Another size has no column: the equation.
        var other = capacity(tables, "natural", new Pipe(Material.COPPER_K, "1"), 20, "7inwc", "0.5inwc");
        assertThat(other.by()).startsWith("low-pressure equation");
        assertThat(other.notes()).contains("K1 has no column for 1 in type K copper");
        // The tables that came with the program are untouched.
        assertThat(capacity(TABLES, "natural", pipe, 20, "7inwc", "0.5inwc").by())
                .startsWith("low-pressure");
    }

    @Test
    void aRowThatAllowsClearlyMoreThanTheEquationDoesNotSize() {
        // The values of 402.4(28) as a reprint shifts them: 80 ft with the value of 70 ft, 7.5 % too much.
        var seventy = capacity(TABLES, "propane", Sites.steel("3/4"), 70, "11inwc", "0.5inwc");
        var shifted = Math.round(seventy.flow().cubicFeetPerHour() * 0.993 * 2.5);
        var tables = TABLES.withShop("propane.csv", """
                table,edition,gas,inlet,drop,material,size,length_ft,capacity_kbtuh,source
                IFGC 402.4(28),IFGC 2012-2018,propane,11inwc,0.5inwc,steel-schedule-40,3/4,70,%d,computed for the test
                IFGC 402.4(28),IFGC 2012-2018,propane,11inwc,0.5inwc,steel-schedule-40,3/4,80,%d,computed for the test
                """.formatted(shifted, shifted));
        var good = capacity(tables, "propane", Sites.steel("3/4"), 70, "11inwc", "0.5inwc");
        assertEquals(shifted * 1000.0, good.heat().btuPerHour(), 1e-6);
        assertEquals("table IFGC 402.4(28), row of 70 ft", good.by());
        assertThat(good.notes()).anyMatch(note -> note.contains("do not size from them"));
        var bad = capacity(tables, "propane", Sites.steel("3/4"), 80, "11inwc", "0.5inwc");
        assertEquals(
                "low-pressure equation (IFGC 402.4), inside diameter 0.824 in, safer than table IFGC 402.4(28), row of"
                        + " 80 ft",
                bad.by());
        assertThat(bad.flow().cubicFeetPerHour() / good.flow().cubicFeetPerHour())
                .isCloseTo(0.935, within(0.01));
        assertThat(bad.notes()).anyMatch(note -> note.contains("clearly more than the equation: not used"));
    }

    @Test
    void aRowWithinATightToleranceOfTheEquationSizes() {
        var computed = capacity(TABLES, "natural", new Pipe(Material.COPPER_L, "2"), 50, "7inwc", "0.5inwc")
                .flow()
                .cubicFeetPerHour();
        for (var more : new double[] {1.016, 1.018}) {
            var tables = TABLES.withShop("own.csv", HEAD + """
                    L1,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-l,2,50,%.0f,computed for the test
                    """.formatted(computed * more));
            var basis = capacity(tables, "natural", new Pipe(Material.COPPER_L, "2"), 50, "7inwc", "0.5inwc")
                    .basis();
            assertEquals(more < 1.017 ? Capacity.Basis.TABLE : Capacity.Basis.EQUATION, basis, "at " + more);
        }
    }

    @Test
    void oneUnitOfTheLastDigitIsForgivenToSmallCapacities() {
        // 1/4 in type K over 100 ft: about 5.7 cfh; 6 is 5 % more and still one unit.
        var pipe = new Pipe(Material.COPPER_K, "1/4");
        var computed = capacity(TABLES, "natural", pipe, 100, "7inwc", "0.5inwc")
                .flow()
                .cubicFeetPerHour();
        var tables = TABLES.withShop("own.csv", HEAD + """
                K2,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,1/4,100,%.0f,computed for the test
                """.formatted(Math.ceil(computed)));
        assertThat(Math.ceil(computed) / computed).isGreaterThan(1.017);
        assertEquals(
                Capacity.Basis.TABLE,
                capacity(tables, "natural", pipe, 100, "7inwc", "0.5inwc").basis());
        // The last digit of a printed capacity: whole numbers below 100, three digits from there on.
        assertEquals(1, new CapacityTable.Cell(99, "").lastDigit());
        assertEquals(1, new CapacityTable.Cell(100, "").lastDigit());
        assertEquals(10, new CapacityTable.Cell(1390, "").lastDigit());
        assertEquals(1000, new CapacityTable.Cell(189_000, "").lastDigit());
    }

    @Test
    void aMakersTableForTubingReplacesTheOneAtHandAsAWhole() {
        var tables = TABLES.withShop("tubing.csv", HEAD + """
                Maker A,maker 2024,natural,<2psi,0.5inwc,csst,19,10,101,invented for the test
                Maker A,maker 2024,natural,<2psi,0.5inwc,csst,19,20,70,invented for the test
                """);
        var pipe = new Pipe(Material.CSST, "19");
        assertEquals(
                "table Maker A, row of 10 ft",
                capacity(tables, "natural", pipe, 8, "7inwc", "0.5inwc").by());
        assertEquals(List.of(pipe), tables.sizes(Material.CSST));
        assertThatThrownBy(() -> capacity(tables, "natural", pipe, 30, "7inwc", "0.5inwc"))
                .hasMessageContaining("up to 20 ft, the last row of Maker A");
        assertThatThrownBy(() -> capacity(tables, "natural", new Pipe(Material.CSST, "25"), 10, "7inwc", "0.5inwc"))
                .isInstanceOf(Refusal.Unknown.class);
        // Pressure loss follows the maker's figures too.
        var loss = new PressureLoss(tables, Gas.ofCode(Fuel.NATURAL));
        assertThat(loss.of(FlowEquation.LOW, pipe, Length.ofFeet(20), 70)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void aMakersTableForPropaneGoesBeforeTheDerivedOne() {
        var tables = TABLES.withShop("tubing.csv", """
                table,edition,gas,inlet,drop,material,size,length_ft,capacity_kbtuh,source
                Maker P,maker 2024,propane,11inwc,0.5inwc,csst,37,60,430,invented for the test
                """);
        var pipe = new Pipe(Material.CSST, "37");
        var capacity = capacity(tables, "propane", pipe, 60, "11inwc", "0.5inwc");
        assertEquals("table Maker P, row of 60 ft", capacity.by());
        assertEquals(430_000, capacity.heat().btuPerHour(), 1e-6);
        // At another inlet pressure the derived rule still holds.
        assertThatThrownBy(() -> capacity(tables, "propane", pipe, 60, "12inwc", "0.5inwc"))
                .hasMessageContaining("use the maker's table");
    }

    @Test
    void aTubeWithASingleRowStillGivesALoss() {
        var tables = TABLES.withShop("tubing.csv", HEAD + """
                Maker A,maker 2024,natural,<2psi,0.5inwc,csst,19,10,100,invented for the test
                """);
        var loss = new PressureLoss(tables, Gas.ofCode(Fuel.NATURAL));
        var pipe = new Pipe(Material.CSST, "19");
        assertThat(loss.of(FlowEquation.LOW, pipe, Length.ofFeet(10), 100)).isCloseTo(0.5, within(1e-9));
        assertThat(loss.of(FlowEquation.LOW, pipe, Length.ofFeet(10), 200)).isCloseTo(2.0, within(1e-9));
    }

    @Test
    void oldAndPresentTablesDoNotMix() {
        var old = HEAD + """
                NFPA old,NFPA 54 before 2002,natural,<2psi,0.5inwc,steel-schedule-40,1-1/4,10,1400,a manual of 1998
                """;
        assertThatThrownBy(() -> TABLES.withShop("old.csv", old))
                .isInstanceOf(Refusal.NotAllowed.class)
                .hasMessage("old.csv: edition of NFPA old 'NFPA 54 before 2002' is refused; allowed: IFGC 2012-2018, as"
                        + " the tables at hand (old and present tables do not mix); for CSST also 'maker ...'");
        // A maker's edition is for tubing only.
        assertThatThrownBy(() -> TABLES.withShop("old.csv", old.replace("NFPA 54 before 2002", "maker 1998")))
                .isInstanceOf(Refusal.NotAllowed.class);
        assertEquals("IFGC 2012-2018", TABLES.edition());
    }

    @Test
    void oneTableHasOneEdition() {
        var mixed = HEAD + """
                T,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,10,275,invented for the test
                T,NFPA 54 before 2002,natural,<2psi,0.5inwc,copper-k,3/4,20,190,invented for the test
                """;
        assertThatThrownBy(() -> TABLES.withShop("mixed.csv", mixed))
                .hasMessageStartingWith(
                        "mixed.csv line 3: edition 'NFPA 54 before 2002' is refused; allowed: one edition in"
                                + " a table: IFGC 2012-2018");
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "0.5inwc | 0.5 | line 2: unit of pressure in '0.5'",
                "natural | town | line 2: fuel 'town' is refused",
                "copper-k | gold | line 2: material 'gold' is refused",
                "3/4 | wide | line 2: pipe size 'wide' is refused",
                "275 | 275.x | line 2: capacity_cfh '275.x' is refused; allowed: a plain number above 0",
                "275 | 0 | line 2: capacity_cfh '0' is refused",
                "275 | -4 | line 2: capacity_cfh '-4' is refused",
                ",10, | ,ten, | line 2: length_ft 'ten' is refused",
                "invented | '' | own.csv",
                "189 | 290 | T size 3/4: capacity at 20 ft '290.0' is refused; allowed: at most 275.0",
                ",20, | ,10, | line 3: row 'T size 3/4 length 10' is refused; allowed: one row each",
                "3/4,20 | 3/4 in,10 | one row each",
                "source | origin | column source 'nothing' is refused",
                "T,IFGC | ,IFGC | line 2: table 'nothing' is refused",
            })
    void rowsThatCannotBeReadAreRefusedByLineAndColumn(String what, String by, String message) {
        var good = HEAD + """
                T,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,10,275,invented
                T,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,20,189,x
                """;
        assertThat(good).contains(what);
        var bad = good.replaceFirst(java.util.regex.Pattern.quote(what), by);
        assertThatThrownBy(() -> TABLES.withShop("own.csv", bad))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining(message);
    }

    @Test
    void differentConditionsUnderOneNumberAreRefused() {
        var rows = HEAD + """
                T,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,10,275,invented for the test
                T,IFGC 2012-2018,natural,<2psi,1inwc,copper-k,3/4,20,280,invented for the test
                """;
        assertThatThrownBy(() -> TABLES.withShop("own.csv", rows))
                .hasMessageContaining(
                        "line 3: gas, inlet, drop or material 'T' is refused; allowed: natural gas, copper-k,"
                                + " inlet below 2 psi, drop 0.5 in w.c.");
    }

    @Test
    void thousandsOfBtuAreForPropaneOnly() {
        var rows = """
                table,edition,gas,inlet,drop,material,size,length_ft,capacity_kbtuh,source
                T,IFGC 2012-2018,natural,<2psi,0.5inwc,copper-k,3/4,10,275,invented for the test
                """;
        assertThatThrownBy(() -> TABLES.withShop("own.csv", rows))
                .hasMessageContaining("capacity_kbtuh '275' is refused; allowed: propane rows only");
    }

    @Test
    void textThatIsNoTableIsRefused() {
        assertThatThrownBy(() -> TABLES.withShop("own.csv", "")).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> TABLES.withShop("own.csv", HEAD)).hasMessageContaining("at least one row");
        assertThatThrownBy(() -> TABLES.withShop("own.csv", "a,b\n1,2\n"))
                .hasMessageStartingWith("own.csv: column table 'nothing' is refused");
        assertThatThrownBy(() -> TABLES.withShop("own.csv", HEAD + "a,b,c,d,e,f,g,h,i,j,k,l\n"))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> GasTables.of(Map.of())).hasMessageContaining("file tables.csv");
    }

    @Test
    void multipliersOfGravityAreThoseOfTheCode() {
        // 2018 IFGC Table A.2.4, and its rule: the root of 0.60 over S, the next heavier line between two
        assertEquals(1.0, TABLES.gravityMultiplier(0.60));
        assertEquals(0.96, TABLES.gravityMultiplier(0.601));
        assertEquals(0.96, TABLES.gravityMultiplier(0.65));
        assertEquals(0.63, TABLES.gravityMultiplier(1.50));
        assertEquals(0.54, TABLES.gravityMultiplier(2.10));
        assertEquals(1.31, TABLES.gravityMultiplier(0.35));
        for (var gravity : new double[] {0.35, 0.5, 0.7, 0.85, 1.0, 1.2, 1.5, 1.8, 2.1}) {
            assertThat(TABLES.gravityMultiplier(gravity)).isCloseTo(Math.sqrt(0.60 / gravity), within(0.006));
        }
        assertThatThrownBy(() -> TABLES.gravityMultiplier(2.2)).isInstanceOf(Refusal.OutOfRange.class);
    }

    @Test
    void boresAreThoseOfTheCode() {
        // 2018 IFGC Table A.5.2 and the heads of the sizing tables
        assertEquals(1.380, TABLES.bore(Sites.steel("1-1/4")).orElseThrow().inches(), 1e-9);
        assertEquals(
                0.745,
                TABLES.bore(new Pipe(Material.COPPER_K, "3/4")).orElseThrow().inches(),
                1e-9);
        assertEquals(
                1.265,
                TABLES.bore(new Pipe(Material.COPPER_L, "1-1/4")).orElseThrow().inches(),
                1e-9);
        assertEquals(
                1.328,
                TABLES.bore(new Pipe(Material.POLYETHYLENE, "1-1/4"))
                        .orElseThrow()
                        .inches(),
                1e-9);
        assertThat(TABLES.bore(new Pipe(Material.CSST, "25"))).isEmpty();
        assertEquals(10, TABLES.sizes(Material.STEEL_SCHEDULE_40).size());
        assertEquals(9, TABLES.offered(Material.STEEL_SCHEDULE_40).size());
        assertEquals(9, TABLES.sizes(Material.COPPER_K).size());
        assertEquals(9, TABLES.sizes(Material.COPPER_L).size());
        assertEquals(8, TABLES.sizes(Material.POLYETHYLENE).size());
        assertEquals(14, TABLES.offered(Material.CSST).size());
        assertEquals("60", TABLES.sizes(Material.CSST).get(12).size());
    }

    @Test
    void fittingsAreNamedAndUnknownOnesRefused() {
        assertEquals("90 degree ell", TABLES.fittingWords("ell-90"));
        assertThatThrownBy(() -> TABLES.fittingWords("knee"))
                .isInstanceOf(Refusal.Unknown.class)
                .hasMessageContaining("angle-valve, ball-valve, check-valve, cock, ell-45, ell-90");
        assertThatThrownBy(() -> TABLES.equivalentLength(Sites.steel("1"), Map.of("knee", 1)))
                .isInstanceOf(Refusal.Unknown.class);
        // A swing check valve is 83 bores: 83 x 1.049 / 12
        assertEquals(
                83 * 1.049 / 12,
                TABLES.equivalentLength(Sites.steel("1"), Map.of("check-valve", 1))
                        .feet(),
                1e-9);
        var sum = Fittings.counted(Map.of("ell-90", 2))
                .plus(Fittings.counted(Map.of("ell-90", 1, "cock", 1)))
                .plus(Fittings.estimated(Length.ofFeet(3)));
        assertEquals(Map.of("ell-90", 3, "cock", 1), sum.counts());
        assertEquals(4, sum.number());
        assertEquals(3, sum.estimated().feet());
    }
}
