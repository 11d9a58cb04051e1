package fairflame.gas;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fairflame.Refusal;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Longer never carries more, larger never less, one more appliance never raises a pressure. */
class MonotonyTest {
    private static final String[][] CONDITIONS = {
        {"7inwc", "0.5inwc"},
        {"7inwc", "0.3inwc"},
        {"8inwc", "1inwc"},
        {"11inwc", "0.5inwc"},
        {"2psi", "1psi"},
        {"5psi", "3.5psi"},
        {"3psi", "1psi"}
    };

    private record Case(Gas gas, Pipe pipe, double feet, Pressure inlet, Pressure drop) {
        static Case of(Random random) {
            var fuel = random.nextInt(4) == 0 ? Fuel.PROPANE : Fuel.NATURAL;
            var gravity =
                    random.nextInt(3) == 0 ? Optional.of(0.5 + random.nextDouble() * 0.4) : Optional.<Double>empty();
            var material = Material.values()[random.nextInt(Material.values().length)];
            var sizes = Sites.TABLES.sizes(material);
            var conditions = CONDITIONS[random.nextInt(CONDITIONS.length)];
            var feet = random.nextBoolean() ? 1 + random.nextInt(600) : 1 + random.nextDouble() * 600;
            return new Case(
                    Gas.of(fuel, fuel == Fuel.NATURAL ? gravity : Optional.empty(), Optional.empty()),
                    sizes.get(random.nextInt(sizes.size())),
                    feet,
                    Pressure.parse(conditions[0]),
                    Pressure.parse(conditions[1]));
        }

        Case feet(double other) {
            return new Case(gas, pipe, other, inlet, drop);
        }

        Case pipe(Pipe other) {
            return new Case(gas, other, feet, inlet, drop);
        }

        /** None where no table or equation holds. */
        Optional<Double> carries(boolean sizing) {
            var run = new Run(gas, pipe, Length.ofFeet(feet), inlet, drop);
            try {
                var capacity = sizing ? Capacity.forSizing(Sites.TABLES, run) : Capacity.of(Sites.TABLES, run);
                return Optional.of(capacity.flow().cubicFeetPerHour());
            } catch (Refusal notKnown) {
                return Optional.empty();
            }
        }
    }

    @Test
    void aLongerRunNeverCarriesMore() {
        for (long seed = 0; seed < 20_000; seed++) {
            var random = new Random(seed);
            var one = Case.of(random);
            var step = random.nextInt(3) == 0 ? random.nextDouble() * 2 : random.nextDouble() * 200;
            var longer = one.feet(one.feet() + step);
            for (var sizing : new boolean[] {false, true}) {
                var carries = one.carries(sizing);
                var then = longer.carries(sizing);
                assertTrue(
                        carries.isEmpty() || then.isEmpty() || then.get() <= carries.get() * (1 + 1e-12),
                        "seed " + seed + " sizing " + sizing + ": " + one + " carries " + carries + ", " + step
                                + " ft more " + then);
            }
        }
    }

    @Test
    void aLargerSizeNeverCarriesLess() {
        for (long seed = 0; seed < 20_000; seed++) {
            var one = Case.of(new Random(seed));
            var sizes = Sites.TABLES.sizes(one.pipe().material());
            var index = sizes.indexOf(one.pipe());
            if (index + 1 < sizes.size()) {
                var larger = one.pipe(sizes.get(index + 1));
                for (var sizing : new boolean[] {false, true}) {
                    var carries = one.carries(sizing);
                    var then = larger.carries(sizing);
                    assertTrue(
                            carries.isEmpty() || then.isEmpty() || then.get() >= carries.get(),
                            "seed " + seed + ": " + one + " carries " + carries + ", " + larger.pipe() + " " + then);
                }
            }
        }
    }

    @Test
    void oneMoreApplianceNeverRaisesAPressureNorMakesASizeSmaller() {
        for (long seed = 0; seed < 400; seed++) {
            var random = new Random(seed);
            var layout = new RandomSites(seed).broad(3 + random.nextInt(10), 60);
            var more = with(layout, random);
            var few = PressureProfile.of(Sites.TABLES, layout, Firing.all(layout));
            var many = PressureProfile.of(Sites.TABLES, more, Firing.all(more));
            for (var outlet : few.appliances()) {
                assertTrue(
                        many.appliance(outlet.id()).pressure().compareTo(outlet.pressure()) <= 0,
                        "seed " + seed + ": " + outlet + " then " + many.appliance(outlet.id()));
            }
            for (var method : List.of(Method.LONGEST_LENGTH, Method.BRANCH_LENGTH)) {
                var sized = Sizing.of(Sites.TABLES, layout, method);
                var resized = Sizing.of(Sites.TABLES, more, method);
                for (var size : sized.segments()) {
                    var then = resized.segment(size.id());
                    assertTrue(
                            then.required().isEmpty() || size.required().isPresent() && width(then) >= width(size),
                            "seed " + seed + " " + method + ": " + size + " then " + then);
                }
            }
        }
    }

    private static int width(Sizing.SegmentSize size) {
        var pipe = size.required().orElseThrow();
        return Sites.TABLES.sizes(pipe.material()).indexOf(pipe);
    }

    private static Layout with(Layout layout, Random random) {
        var appliances = new ArrayList<>(layout.appliances());
        var segment = layout.segments().get(random.nextInt(layout.segments().size()));
        appliances.add(new Appliance(
                "one more",
                segment.to(),
                HeatRate.ofBtuPerHour(20_000 + random.nextInt(300_000)),
                new InletRange(Pressure.ofInchesWater(4), Pressure.ofInchesWater(14))));
        return layout.with(layout.segments(), layout.regulators(), appliances);
    }

    @Test
    void moreFlowLosesMoreAndAWiderPipeLess() {
        var loss = new PressureLoss(Sites.TABLES, Gas.ofCode(Fuel.NATURAL));
        for (long seed = 0; seed < 5_000; seed++) {
            var random = new Random(seed);
            var material = Material.values()[random.nextInt(Material.values().length)];
            var sizes = Sites.TABLES.sizes(material);
            var index = random.nextInt(sizes.size() - 1);
            var cfh = 1 + random.nextDouble() * 800;
            var feet = Length.ofFeet(1 + random.nextDouble() * 300);
            var one = loss.of(FlowEquation.LOW, sizes.get(index), feet, cfh);
            assertTrue(
                    loss.of(FlowEquation.LOW, sizes.get(index), feet, cfh * 1.01) > one,
                    "seed " + seed + ": " + sizes.get(index) + " at " + cfh);
            assertTrue(
                    material == Material.CSST || loss.of(FlowEquation.LOW, sizes.get(index + 1), feet, cfh) < one,
                    "seed " + seed + ": " + sizes.get(index + 1) + " at " + cfh);
        }
    }
}
