package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.Refusal;
import fairflame.quantity.GasFlow;
import fairflame.quantity.HeatRate;
import fairflame.quantity.Length;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class LeastCostPlanTest {
    private static final MadeUpPrices STEEL = MadeUpPrices.of(Material.STEEL_SCHEDULE_40);

    /** Acceptance case 2 as a layout: 84 ft of 3/4 in with 26 ft of fittings, 1.0 in w.c. allowed. */
    private static Layout heaterLine() {
        return Sites.site()
                .from(Sites.meter("9.8inwc"))
                .drop("1inwc")
                .pipe("line", "m", "pad", Sites.steel("3/4"), 84, Fittings.estimated(Length.ofFeet(26)))
                .appliance("heater", "pad", 388_000, "6inwc")
                .build();
    }

    private static PlanChoices find(Layout layout, PipePrices prices, PlanRules rules) {
        return LeastCostPlan.find(Sites.TABLES, layout, prices, rules);
    }

    private static List<String> words(Plan plan) {
        return plan.changes().stream().map(Change::words).toList();
    }

    @Test
    void theHeaterLineIsReplacedByTheLeastSizeThatKeepsTheAllowedDrop() {
        var choices = find(heaterLine(), STEEL, PlanRules.cautious(heaterLine()));
        var plan = choices.best().orElseThrow();
        assertEquals(Plan.Kind.LARGER_PIPE, plan.kind());
        assertEquals(
                List.of(
                        "Replace 84 ft of 3/4 in Schedule 40 steel (segment line) by 1-1/4 in Schedule 40 steel.",
                        "Once for all changes: permit, pressure test, gas fitter."),
                words(plan));
        var replaced = plan.changes().get(0);
        assertEquals(Change.Kind.REPLACE, replaced.kind());
        assertEquals("line", replaced.at());
        assertEquals("3/4", replaced.was().orElseThrow().size());
        assertEquals("1-1/4", replaced.pipe().orElseThrow().size());
        assertEquals(84, replaced.route().orElseThrow().length().feet());
        assertEquals(388, replaced.flow().cubicFeetPerHour());
        // 14 + 7 x 1.380 a foot, no counted fittings; 380 once
        assertEquals("USD 1987.44", replaced.price().toString());
        assertEquals("USD 2367.44", plan.cost().toString());
        // 26 ft in 3/4 in are 43.5 ft in 1-1/4 in: 127.5 ft lose 0.59 at 388 cfh
        assertThat(plan.firing().appliance("heater").drop().inchesWater()).isCloseTo(0.593, within(0.001));
        assertThat(plan.alone().appliance("heater").drop().inchesWater()).isCloseTo(0.593, within(0.001));
        assertEquals("1-1/4", plan.after().segment("line").pipe().size());
        assertThat(choices.proof().states()).isPositive();
        assertThat(choices.proof().searches()).isGreaterThan(2);
    }

    @Test
    void higherPressureLeavesThePipeAndSetsARegulatorAtTheHeater() {
        var rules = PlanRules.cautious(heaterLine()).raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(9));
        var choices = find(heaterLine(), STEEL, rules);
        var plan = choices.best().orElseThrow();
        assertEquals(Plan.Kind.RAISED_PRESSURE, plan.kind());
        assertEquals(
                List.of(
                        "The gas supplier raises the delivery from 9.8 in w.c. to 2 psi.",
                        "Line regulator before heater, set to 9 in w.c., for 388 ft\u00B3/h.",
                        "Once for all changes: permit, pressure test, gas fitter."),
                words(plan));
        assertEquals("USD 770.00", plan.cost().toString());
        assertEquals(2, plan.after().source().pressure().psi(), 1e-12);
        assertEquals(9, plan.firing().appliance("heater").pressure().inchesWater(), 1e-9);
        assertThat(plan.firing().regulators()).hasSize(1);
        assertThat(plan.firing().enough()).isTrue();
        // The next best is the larger pipe, as a choice of its own.
        assertEquals(Plan.Kind.LARGER_PIPE, choices.alternatives().get(0).kind());
        assertEquals("USD 2367.44", choices.alternatives().get(0).cost().toString());
    }

    @Test
    void alternativesAreDistinctAndDearerInOrder() {
        var rules = PlanRules.cautious(heaterLine()).raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(9));
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.COPPER_L);
        var choices = find(heaterLine(), prices, rules);
        assertThat(choices.alternatives()).hasSizeGreaterThanOrEqualTo(2);
        var all = new java.util.ArrayList<>(List.of(choices.best().orElseThrow()));
        all.addAll(choices.alternatives());
        assertThat(all.stream().map(Plan::signature).distinct()).hasSameSizeAs(all);
        for (int i = 1; i < all.size(); i++) {
            assertThat(all.get(i).cost()).isGreaterThanOrEqualTo(all.get(i - 1).cost());
        }
        assertThat(all)
                .anyMatch(plan -> plan.changes().stream().anyMatch(change -> change.kind() == Change.Kind.OWN_LINE));
        assertThat(all)
                .anyMatch(plan -> plan.changes().stream()
                        .flatMap(change -> change.pipe().stream())
                        .anyMatch(pipe -> pipe.material() == Material.COPPER_L));
    }

    @Test
    void pipingThatIsEnoughIsLeftAlone() {
        var layout = Sites.site()
                .pipe("line", "m", "pad", "1-1/4", 40)
                .appliance("heater", "pad", 400_000, "4inwc")
                .build();
        var choices = find(layout, STEEL, PlanRules.cautious(layout));
        var plan = choices.best().orElseThrow();
        assertEquals(Plan.Kind.NOTHING, plan.kind());
        assertThat(plan.changes()).isEmpty();
        assertEquals("USD 0.00", plan.cost().toString());
        assertThat(choices.alternatives()).isEmpty();
        assertEquals(1, choices.proof().searches());
    }

    /** A house where the heater starves the furnace: one shared trunk, a separate way for the heater. */
    private static Layout shared() {
        var heater = new Appliance(
                "heater",
                "pad",
                HeatRate.ofBtuPerHour(250_000),
                new InletRange(Pressure.parse("4inwc"), Pressure.parse("14inwc")),
                Optional.empty(),
                Optional.of(new Route(Length.ofFeet(30), Fittings.counted(Map.of("ell-90", 2)), Place.BURIED)));
        return Sites.site()
                .pipe("trunk", "m", "x", "1", 70)
                .pipe("pool", "x", "pad", "1", 40)
                .pipe("house", "x", "closet", "3/4", 20)
                .appliance(heater)
                .appliance("furnace", "closet", 90_000, "5inwc")
                .build();
    }

    @Test
    void aShortLineOfItsOwnForTheHeaterBeatsReplacingTheTrunk() {
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.POLYETHYLENE);
        var choices = find(shared(), prices, PlanRules.cautious(shared()));
        var plan = choices.best().orElseThrow();
        assertEquals(Plan.Kind.OWN_LINE, plan.kind());
        assertThat(words(plan))
                .contains(
                        "Cap 1 in Schedule 40 steel of segment pool: it serves nothing any more.",
                        "A line of its own from the meter to heater: 30 ft of 1 in Schedule 40 steel.");
        assertEquals(
                "end of own line of heater", plan.after().appliance("heater").node());
        assertEquals(
                30, plan.after().segment("own line of heater").route().length().feet());
        assertThat(plan.after().segments()).noneMatch(segment -> segment.id().equals("pool"));
        assertEquals(90, plan.firing().segment("trunk").flow().cubicFeetPerHour());
        assertThat(plan.firing().enough()).isTrue();
        var line = plan.changes().stream()
                .filter(change -> change.kind() == Change.Kind.OWN_LINE)
                .findFirst()
                .orElseThrow();
        // 14 + 7 x 1.049 a foot, 12 + 9 x 1.049 a fitting
        assertEquals("USD 683.17", line.price().toString());
    }

    @Test
    void materialsStayWhereThePlaceAllowsThem() {
        var rules = PlanRules.cautious(shared());
        assertThat(rules.allows(new Pipe(Material.POLYETHYLENE, "1"), Place.BURIED))
                .isTrue();
        assertThat(rules.allows(new Pipe(Material.POLYETHYLENE, "1"), Place.OUTDOORS))
                .isFalse();
        assertThat(rules.allows(new Pipe(Material.CSST, "25"), Place.BURIED)).isFalse();
        assertThat(rules.allows(new Pipe(Material.CSST, "25"), Place.INDOORS)).isTrue();
        var copper = rules.only(Set.of(Material.COPPER_L));
        assertThat(copper.allows(Sites.steel("1"), Place.INDOORS)).isFalse();
        assertThat(copper.allows(new Pipe(Material.COPPER_L, "1"), Place.INDOORS))
                .isTrue();
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.COPPER_L);
        var choices = find(shared(), prices, copper);
        choices.best()
                .orElseThrow()
                .changes()
                .forEach(change -> change.pipe().ifPresent(pipe -> assertEquals(Material.COPPER_L, pipe.material())));
    }

    @Test
    void ownLinesAreOfferedWhereTheLayoutNamesThemElseToTheLargestAppliance() {
        assertEquals(Set.of("heater"), PlanRules.cautious(shared()).ownLines());
        assertEquals(Set.of("heater"), PlanRules.cautious(heaterLine()).ownLines());
        var none = find(shared(), STEEL, PlanRules.cautious(shared()).withOwnLines(Set.of()));
        assertThat(none.best().orElseThrow().kind()).isEqualTo(Plan.Kind.LARGER_PIPE);
        assertThat(none.alternatives()).noneMatch(plan -> plan.kind() == Plan.Kind.OWN_LINE);
    }

    @Test
    void aPlaceThatForbidsThePressureIndoorsGetsNoElevatedPipeThere() {
        var layout = Sites.site()
                .pipe("line", "m", "pad", "3/4", 80)
                .appliance("heater", "pad", 400_000, "4inwc")
                .build();
        var indoors = new Layout(
                layout.site(),
                layout.gas(),
                layout.altitude(),
                layout.source(),
                List.of(new Segment(
                        "line",
                        "m",
                        "pad",
                        Sites.steel("3/4"),
                        new Route(Length.ofFeet(80), Fittings.none(), Place.INDOORS))),
                List.of(),
                layout.appliances(),
                layout.drop(),
                Optional.empty());
        var rules = PlanRules.cautious(indoors).raising(Pressure.ofPsi(2)).withOwnLines(Set.of());
        assertEquals(
                Plan.Kind.RAISED_PRESSURE,
                find(indoors, STEEL, rules).best().orElseThrow().kind());
        var low = rules.atMostIndoors(Pressure.ofPsi(0.5));
        var plan = find(indoors, STEEL, low).best().orElseThrow();
        assertEquals(Plan.Kind.LARGER_PIPE, plan.kind());
        // Exactly the limit is allowed.
        assertEquals(
                Plan.Kind.RAISED_PRESSURE,
                find(indoors, STEEL, rules.atMostIndoors(Pressure.ofPsi(2)))
                        .best()
                        .orElseThrow()
                        .kind());
    }

    @Test
    void withoutSupplierOrRegulatorThereIsNoHigherPressure() {
        var rules = PlanRules.cautious(heaterLine()).raising(Pressure.ofPsi(2));
        var refused = find(heaterLine(), STEEL.notRaised(), rules);
        assertEquals(Plan.Kind.LARGER_PIPE, refused.best().orElseThrow().kind());
        assertThat(refused.notes()).anyMatch(note -> note.contains("supplier does not offer it"));
        var without = find(heaterLine(), STEEL.withoutRegulators(), rules);
        assertThat(without.alternatives()).noneMatch(plan -> plan.kind() == Plan.Kind.RAISED_PRESSURE);
        assertThat(find(heaterLine(), STEEL, PlanRules.cautious(heaterLine())).notes())
                .anyMatch(note -> note.startsWith("Higher delivery pressure was not weighed: place or supplier"));
    }

    @Test
    void newPipeAlsoMeetsTheLongestLengthUnlessToldOtherwise() {
        // The range branch is short; by the whole run 1/2 in loses little, by the longest length of 110 ft it is too
        // small.
        var layout = Sites.site()
                .drop("0.5inwc")
                .pipe("trunk", "m", "x", "1-1/4", 20)
                .pipe("pool", "x", "pad", "1-1/4", 90)
                .pipe("branch", "x", "kitchen", "3/8", 25)
                .appliance("heater", "pad", 250_000, "4inwc")
                .appliance("range", "kitchen", 60_000, "4inwc")
                .build();
        var byTable = find(layout, STEEL, PlanRules.cautious(layout).withOwnLines(Set.of()));
        var byRun = find(
                layout, STEEL, PlanRules.cautious(layout).withOwnLines(Set.of()).sizedBy(PlanRules.NewPipe.BY_RUN));
        assertEquals(
                "3/4",
                byTable.best().orElseThrow().after().segment("branch").pipe().size());
        assertEquals(
                "1/2",
                byRun.best().orElseThrow().after().segment("branch").pipe().size());
        // What the first one lays passes the sizing method afterwards.
        assertThat(Sizing.of(Sites.TABLES, byTable.best().orElseThrow().after(), Method.LONGEST_LENGTH)
                        .segment("branch")
                        .enough())
                .isTrue();
    }

    @Test
    void anExcessFlowValveIsPricedWhereThePlaceAsksForIt() {
        var rules = PlanRules.cautious(heaterLine()).withExcessFlow(Pressure.ofInchesWater(0.2));
        var plan = find(heaterLine(), STEEL, rules).best().orElseThrow();
        assertThat(words(plan)).contains("Excess-flow valve for 388 ft\u00B3/h at the source, line line.");
        assertEquals("USD 2427.44", plan.cost().toString());
        // A valve that takes 0.5 leaves 0.5 of the 1.0 allowed: 1-1/4 in with its 0.59 is not enough any more.
        var narrow = find(heaterLine(), STEEL, rules.withExcessFlow(Pressure.ofInchesWater(0.5)));
        assertEquals(
                "1-1/2",
                narrow.best().orElseThrow().after().segment("line").pipe().size());
        assertThat(find(heaterLine(), STEEL.withoutValves(), rules).best()).isEmpty();
    }

    @Test
    void excessFlowValvesStandOnOwnLinesToo() {
        var rules = PlanRules.cautious(shared()).withExcessFlow(Pressure.ofInchesWater(0.05));
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.POLYETHYLENE);
        var plan = find(shared(), prices, rules).best().orElseThrow();
        assertEquals(Plan.Kind.OWN_LINE, plan.kind());
        assertThat(plan.changes().stream().map(Change::kind)).contains(Change.Kind.EXCESS_FLOW_VALVE);
    }

    @Test
    void pipingThatHasLineRegulatorsIsPlannedZoneByZone() {
        var layout = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("street", "m", "x", "1/2", 60)
                .pipe("stub", "x", "pad", "3/4", 60)
                .regulator("R", "stub", "8inwc", "450cfh")
                .appliance("heater", "pad", 400_000, "4inwc")
                .build();
        var choices = find(layout, STEEL, PlanRules.cautious(layout).withOwnLines(Set.of()));
        var plan = choices.best().orElseThrow();
        // The street part carries its 400 at 2 psi; the stub behind the regulator loses more than 0.5.
        assertThat(words(plan))
                .containsExactly(
                        "Replace 60 ft of 3/4 in Schedule 40 steel (segment stub) by 1-1/4 in Schedule 40 steel.",
                        "Once for all changes: permit, pressure test, gas fitter.");
        assertThat(plan.firing().enough()).isTrue();
        assertEquals(1, plan.after().regulators().size());
    }

    @Test
    void aRegulatorThatIsTooSmallLeavesOnlyALineOfItsOwn() {
        var layout = Sites.site()
                .from(Sites.meter("2psi"))
                .pipe("street", "m", "pad", "3/4", 60)
                .regulator("R", "heater", "8inwc", "300cfh")
                .appliance("heater", "pad", 400_000, "4inwc")
                .build();
        assertThat(find(layout, STEEL, PlanRules.cautious(layout).withOwnLines(Set.of()))
                        .best())
                .isEmpty();
        var own = find(layout, STEEL, PlanRules.cautious(layout)).best().orElseThrow();
        assertEquals(Plan.Kind.OWN_LINE, own.kind());
        // The old regulator goes with the old line; a new one of the right size stands at the heater.
        assertEquals(1, own.after().regulators().size());
        assertEquals(400, own.after().regulators().get(0).capacity().cubicFeetPerHour(), 1e-9);
        assertThat(own.firing().enough()).isTrue();
        assertThat(own.changes().stream().map(Change::kind)).contains(Change.Kind.REGULATOR, Change.Kind.CAP);
    }

    @Test
    void nothingFeasibleIsSaidAndNotPriced() {
        var layout = Sites.site()
                .from(Sites.meter("4inwc"))
                .pipe("line", "m", "pad", "3/4", 80)
                .appliance("heater", "pad", 400_000, "5inwc")
                .build();
        var choices = find(layout, STEEL, PlanRules.cautious(layout));
        assertThat(choices.best()).isEmpty();
        assertThat(choices.alternatives()).isEmpty();
        assertThat(choices.notes()).anyMatch(note -> note.contains("ask the gas supplier for more pressure"));
    }

    @Test
    void aMeterThatIsTooSmallIsSaidBesideThePlan() {
        var meter = new Source(
                Source.Kind.METER,
                "m",
                Pressure.parse("7inwc"),
                Optional.empty(),
                Optional.of(GasFlow.parse("250cfh")));
        var layout = Sites.site()
                .from(meter)
                .pipe("line", "m", "pad", "3/4", 80)
                .appliance("heater", "pad", 400_000, "4inwc")
                .diversity(0.9, "a letter of the engineer")
                .build();
        assertThat(find(layout, STEEL, PlanRules.cautious(layout)).notes())
                .anyMatch(note -> note.contains("ask the gas supplier for a larger one"))
                .anyMatch(note -> note.contains("diversity of the layout is not used"));
    }

    @Test
    void tubingThatIsLongerThanItsTableCanBeReplaced() {
        var layout = Sites.site()
                .pipe("line", "m", "pad", new Pipe(Material.CSST, "25"), 320, Fittings.none())
                .appliance("heater", "pad", 100_000, "4inwc")
                .build();
        var plan = find(layout, STEEL, PlanRules.cautious(layout)).best().orElseThrow();
        assertEquals(
                Material.STEEL_SCHEDULE_40, plan.after().segment("line").pipe().material());
        assertThat(plan.firing().enough()).isTrue();
    }

    @Test
    void tubingIsLaidOnlyByItsTable() {
        var prices = STEEL.offering(Sites.TABLES.offered(Material.CSST));
        var layout = Sites.site()
                .pipe("line", "m", "pad", "1/2", 55)
                .appliance("heater", "pad", 150_000, "4inwc")
                .build();
        var plan = find(layout, prices, PlanRules.cautious(layout).sizedBy(PlanRules.NewPipe.BY_RUN))
                .best()
                .orElseThrow();
        // 402.4(15), row of 60 ft: EHD 31 carries 153
        assertEquals("31", plan.after().segment("line").pipe().size());
    }

    @Test
    void pricesOfNothingOrInOtherMoneyAreRefused() {
        var free = new PricesThat(STEEL) {
            @Override
            public Money laid(Pipe pipe, Route route) {
                return MadeUpPrices.money("0.00");
            }
        };
        assertThatThrownBy(() -> find(heaterLine(), free, PlanRules.cautious(heaterLine())))
                .isInstanceOf(Refusal.OutOfRange.class)
                .hasMessageContaining("price of 1/2 in Schedule 40 steel 'USD 0.00' is refused; allowed: above 0");
        var negative = new PricesThat(STEEL) {
            @Override
            public Money laid(Pipe pipe, Route route) {
                return MadeUpPrices.money("-3.00");
            }
        };
        assertThatThrownBy(() -> find(heaterLine(), negative, PlanRules.cautious(heaterLine())))
                .hasMessageContaining("not below 0");
        var foreign = new PricesThat(STEEL) {
            @Override
            public Money laid(Pipe pipe, Route route) {
                return Money.of(CurrencyUnit.EUR, 5);
            }
        };
        assertThatThrownBy(() -> find(heaterLine(), foreign, PlanRules.cautious(heaterLine())))
                .hasMessageContaining("currency 'EUR'");
        var odd = STEEL.offering(List.of(new Pipe(Material.STEEL_SCHEDULE_40, "7")));
        assertThatThrownBy(() -> find(heaterLine(), odd, PlanRules.cautious(heaterLine())))
                .isInstanceOf(Refusal.Unknown.class);
    }

    @Test
    void rulesOutsideOfReasonAreRefused() {
        var rules = PlanRules.cautious(heaterLine());
        assertThatThrownBy(() -> rules.raising(Pressure.ofPsi(1))).hasMessageContaining("1.5 psi or more");
        assertThatThrownBy(() -> rules.regulatedTo(Pressure.ofPsi(2))).hasMessageContaining("below 1.5 psi");
        assertThatThrownBy(() -> rules.regulatedTo(Pressure.ofInchesWater(0))).hasMessageContaining("above 0");
    }

    @Test
    void theSameQuestionGetsTheSameAnswer() {
        var layout = new RandomSites(5).broad(30, 30);
        var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.COPPER_L);
        var rules = PlanRules.cautious(layout).raising(Pressure.ofPsi(2));
        assertEquals(find(layout, prices, rules), find(layout, prices, rules));
    }

    /** Prices with one of them replaced. */
    private abstract static class PricesThat implements PipePrices {
        private final PipePrices others;

        PricesThat(PipePrices others) {
            this.others = others;
        }

        @Override
        public CurrencyUnit currency() {
            return others.currency();
        }

        @Override
        public List<Pipe> offers() {
            return others.offers();
        }

        @Override
        public Optional<Money> regulator(GasFlow flow, Pressure inlet, Pressure outlet) {
            return others.regulator(flow, inlet, outlet);
        }

        @Override
        public Optional<Money> excessFlowValve(GasFlow flow) {
            return others.excessFlowValve(flow);
        }

        @Override
        public Money once() {
            return others.once();
        }

        @Override
        public Optional<Money> raisedDelivery() {
            return others.raisedDelivery();
        }
    }
}
