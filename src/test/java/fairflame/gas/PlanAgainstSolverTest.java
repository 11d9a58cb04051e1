package fairflame.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fairflame.quantity.Pressure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The planner against a general mixed-integer solver (ojAlgo) on random piping of 3 to 12 segments. */
class PlanAgainstSolverTest {
    /** One random question: layout, prices and rules. */
    record Question(Layout layout, MadeUpPrices prices, PlanRules rules) {
        static Question of(long seed) {
            var random = new Random(seed);
            var count = 3 + random.nextInt(10);
            var sites = new RandomSites(seed * 31 + 7);
            var layout = random.nextBoolean() ? sites.tree(count, 40) : sites.broad(count, 40);
            var offers = new ArrayList<Pipe>();
            offers.addAll(Sites.TABLES.offered(Material.STEEL_SCHEDULE_40).subList(0, 6));
            offers.addAll(Sites.TABLES.offered(Material.COPPER_L));
            offers.addAll(Sites.TABLES.offered(Material.POLYETHYLENE));
            Collections.shuffle(offers, random);
            var prices = MadeUpPrices.of()
                    .offering(List.copyOf(offers.subList(0, 5)))
                    .once(random.nextInt(600) + ".00");
            var own = new HashSet<String>();
            for (int i = random.nextInt(3); i > 0; i--) {
                own.add("a" + random.nextInt(layout.appliances().size()));
            }
            var rules = PlanRules.cautious(layout).withOwnLines(own);
            rules = random.nextBoolean() ? rules : rules.sizedBy(PlanRules.NewPipe.BY_RUN);
            rules = random.nextInt(3) == 0
                    ? rules
                    : rules.raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(7));
            rules = random.nextInt(3) > 0 ? rules : rules.atMostIndoors(Pressure.ofPsi(0.5));
            return new Question(layout, prices, rules);
        }

        OptionalLong solver() {
            var present = new SolverPlan(layout, prices, rules, false).cents();
            var cost = present.isEmpty()
                    ? OptionalLong.empty()
                    : OptionalLong.of(present.getAsLong() + (present.getAsLong() > 0 ? once() : 0));
            if (rules.raised().isPresent() && !(cost.isPresent() && cost.getAsLong() == 0)) {
                var raised = new SolverPlan(layout, prices, rules, true).cents();
                if (raised.isPresent()) {
                    var sum = raised.getAsLong()
                            + once()
                            + prices.raisedDelivery().orElseThrow().getAmountMinorLong();
                    cost = cost.isEmpty() || sum < cost.getAsLong() ? OptionalLong.of(sum) : cost;
                }
            }
            return cost;
        }

        private long once() {
            return prices.once().getAmountMinorLong();
        }
    }

    /** The first of the thousand, for those who cannot wait. */
    @Test
    void costsWhatAGeneralSolverFindsOnTheFirstQuestions() {
        for (long seed = 1; seed <= 40; seed++) {
            compare(seed, new HashSet<>());
        }
    }

    @Test
    @Tag("thousand")
    void costsWhatAGeneralSolverFindsOnRandomPiping() {
        var kinds = new HashSet<Plan.Kind>();
        int none = 0;
        for (long seed = 1; seed <= 1000; seed++) {
            none += compare(seed, kinds) ? 0 : 1;
        }
        // Every kind of answer came about, or the comparison would prove less than it says.
        assertThat(kinds).isEqualTo(Set.of(Plan.Kind.values()));
        assertThat(none).isBetween(1, 500);
    }

    /** Whether there is a plan at all. */
    private static boolean compare(long seed, Set<Plan.Kind> kinds) {
        var question = Question.of(seed);
        var expected = question.solver();
        var found = LeastCostPlan.find(Sites.TABLES, question.layout(), question.prices(), question.rules());
        var where = "seed " + seed + ": " + question;
        var cost = found.best()
                .map(plan -> OptionalLong.of(plan.cost().getAmountMinorLong()))
                .orElse(OptionalLong.empty());
        assertEquals(expected, cost, where);
        found.best().ifPresent(plan -> {
            kinds.add(plan.kind());
            assertFeasible(question, plan, where);
        });
        found.alternatives().forEach(plan -> {
            assertFeasible(question, plan, where);
            assertThat(plan.cost().getAmountMinorLong()).as(where).isGreaterThanOrEqualTo(cost.getAsLong());
        });
        return found.best().isPresent();
    }

    /** The plan's own layout, put to the pressure profile: minimum, maximum, allowed drop, regulators. */
    private static void assertFeasible(Question question, Plan plan, String where) {
        var profile = PressureProfile.of(Sites.TABLES, plan.after(), Firing.all(plan.after()));
        assertThat(profile.enough()).as(where).isTrue();
        profile.appliances().forEach(outlet -> {
            assertThat(outlet.supplyTooHigh()).as(where).isFalse();
            assertThat(outlet.drop().inchesWater())
                    .as(where)
                    .isLessThanOrEqualTo(question.layout().drop().low().inchesWater() + 1e-6);
        });
        var sum = plan.changes().stream()
                .mapToLong(change -> change.price().getAmountMinorLong())
                .sum();
        assertEquals(plan.cost().getAmountMinorLong(), sum, where);
    }
}
