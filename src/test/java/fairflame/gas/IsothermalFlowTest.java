package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * The code's equation held against general fluid mechanics: size and slope, no expected values. The grid was made with
 * another library (header of the file); the ports here show that its columns are understood.
 */
class IsothermalFlowTest {
    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;
    private static final double PSI = 6894.757293168;
    private static final double INCH_WATER = PSI / 27.7;
    private static final double KELVIN = 288.7056;
    private static final double BASE = 14.73 * PSI;
    private static final double BAROMETER = 14.7 * PSI;

    private record Row(
            double cfh,
            double bore,
            double feet,
            double gravity,
            double inlet,
            double spitzglass,
            double darcy,
            double code) {
        Gas gas() {
            return Gas.of(gravity == 0.60 ? Fuel.NATURAL : Fuel.PROPANE, Optional.of(gravity), Optional.empty());
        }

        double ours() {
            return FlowEquation.LOW.loss(gas(), bore, feet, cfh);
        }

        double absolute() {
            return BAROMETER + inlet * INCH_WATER;
        }

        double cubicMetres() {
            return cfh * FOOT * FOOT * FOOT / 3600;
        }

        private double viscosity() {
            return gravity == 0.60 ? 1.2e-5 : 0.8e-5;
        }

        private double density() {
            return gravity * 28.9647e-3 * absolute() / (8.314462618 * KELVIN);
        }

        private double velocity() {
            var area = Math.PI * Math.pow(bore * INCH, 2) / 4;
            return cubicMetres() * BASE / absolute() / area;
        }

        double reynolds() {
            return density() * velocity() * bore * INCH / viscosity();
        }

        /** Darcy and Weisbach with the friction of Colebrook, laminar below 2,040. */
        double darcyPort() {
            var friction = reynolds() < 2040 ? 64 / reynolds() : colebrook(reynolds(), 0.0018 / bore);
            return friction * feet * FOOT / (bore * INCH) * density() * velocity() * velocity() / 2 / INCH_WATER;
        }

        private static double colebrook(double reynolds, double roughness) {
            var root = 8.0;
            for (int i = 0; i < 50; i++) {
                root = -2 * Math.log10(roughness / 3.7 + 2.51 * root / reynolds);
            }
            return 1 / (root * root);
        }

        /** Spitzglass for low pressure, in the form that the library solves for the outlet pressure. */
        double spitzglassPort() {
            var metres = bore * INCH;
            var friction = 1 + 0.09144 / metres + 1.1811 * metres;
            var flow = cubicMetres() / (125.1060 * KELVIN / BASE * Math.pow(metres, 2.5));
            return flow * flow * feet * FOOT * gravity * KELVIN * friction / (2 * (BASE + 1210)) / INCH_WATER;
        }
    }

    private static List<Row> rows(Predicate<Row> which) {
        try (var stream = IsothermalFlowTest.class.getResourceAsStream("isothermal-grid.csv")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.matches("[0-9].*"))
                    .map(line -> line.split(","))
                    .map(c -> new Row(at(c, 0), at(c, 1), at(c, 2), at(c, 3), at(c, 4), at(c, 5), at(c, 7), at(c, 8)))
                    .filter(which)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double at(String[] cells, int index) {
        return Double.parseDouble(cells[index]);
    }

    @Test
    void theGridIsWhole() {
        assertEquals(216, rows(row -> true).size());
    }

    @Test
    void ourEquationIsTheOneOfTheGrid() {
        for (var row : rows(row -> true)) {
            assertThat(row.ours()).as("%s", row).isCloseTo(row.code(), within(1.01e-4));
        }
    }

    @Test
    void thePortsGiveTheColumnsOfTheGrid() {
        for (var row : rows(row -> true)) {
            assertThat(row.darcyPort()).as("%s", row).isCloseTo(row.darcy(), Percentage.withPercentage(0.1));
            assertThat(row.spitzglassPort()).as("%s", row).isCloseTo(row.spitzglass(), Percentage.withPercentage(0.1));
        }
    }

    @Test
    void theCodeHasTheSizeOfDarcysLawWhereFlowIsTurbulent() {
        // Nearer than 20 % from 1 in on; at 4 in the smooth-pipe law of the code lies highest against it.
        for (var row : rows(row -> row.gravity() == 0.60 && row.bore() > 1)) {
            assertThat(row.darcy() / row.ours()).as("%s", row).isBetween(0.80, 1.13);
        }
        // The note to the grid gives these ends for 1-1/4 in and 2 in.
        assertEnds(1.380, 0.91, 1.05);
        assertEnds(2.067, 0.87, 0.96);
        assertEnds(4.026, 0.82, 0.86);
    }

    private static void assertEnds(double bore, double least, double greatest) {
        var ratios = rows(row -> row.gravity() == 0.60 && row.bore() == bore).stream()
                .mapToDouble(row -> row.darcy() / row.ours())
                .summaryStatistics();
        assertThat(ratios.getMin()).isCloseTo(least, within(0.006));
        assertThat(ratios.getMax()).isCloseTo(greatest, within(0.006));
    }

    @Test
    void theCodeHasTheSlopeOfDarcysLaw() {
        // Drop over flow, from the smallest to the largest flow of one pipe: Darcy in rough steel 1.8 to 2.0, the code
        // 0.381/0.206 = 1.85, Spitzglass 2 by its form.
        var by = Map.of(1.380, 0.12, 2.067, 0.10, 4.026, 0.10);
        by.forEach((bore, tolerance) -> {
            for (var feet : new double[] {20, 60, 100, 200}) {
                var pipe = rows(row -> row.gravity() == 0.60 && row.bore() == bore && row.feet() == feet);
                var first = pipe.get(0);
                var last = pipe.get(pipe.size() - 1);
                var flows = Math.log(last.cfh() / first.cfh());
                assertThat(Math.log(last.darcy() / first.darcy()) / flows)
                        .as("%s in, %s ft", bore, feet)
                        .isCloseTo(0.381 / 0.206, within(tolerance));
                assertThat(Math.log(last.ours() / first.ours()) / flows).isCloseTo(0.381 / 0.206, within(1e-9));
                assertThat(Math.log(last.spitzglass() / first.spitzglass()) / flows)
                        .isCloseTo(2, within(0.01));
            }
        });
    }

    @Test
    void spitzglassIsHarshInSmallBoresAndCrossesTheCodeNearTwoInches() {
        assertThat(rows(row -> row.gravity() == 0.60 && row.bore() == 0.622))
                .allMatch(row -> row.spitzglass() > 1.5 * row.ours());
        var two = rows(row -> row.gravity() == 0.60 && row.bore() == 2.067);
        assertThat(two).anyMatch(row -> row.spitzglass() < row.ours()).anyMatch(row -> row.spitzglass() > row.ours());
    }

    @Test
    void aConstantThatIsFivePercentOffLeavesTheBandOfDarcysLaw() {
        // 19.17 raised by 5 % takes 21 % off every drop: the ends above are not met any more.
        var ratios = rows(row -> row.gravity() == 0.60 && row.bore() == 2.067).stream()
                .mapToDouble(row -> row.darcy() / (row.ours() * Math.pow(1.05, -1 / 0.206)))
                .summaryStatistics();
        assertThat(ratios.getMin()).isGreaterThan(1.05);
    }
}
