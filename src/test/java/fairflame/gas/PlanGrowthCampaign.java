package fairflame.gas;

import fairflame.quantity.Pressure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Measures how long a plan takes as layouts grow. */
@Tag("campaign")
class PlanGrowthCampaign {
    @Test
    void measures() {
        for (var size : new int[] {12, 12, 12, 12, 25, 50, 100, 200, 350, 500}) {
            for (int seed = 0; seed < 3; seed++) {
                var layout = new RandomSites(seed).broad(size, 30);
                var prices = MadeUpPrices.of(Material.STEEL_SCHEDULE_40, Material.COPPER_L);
                var rules =
                        PlanRules.cautious(layout).raising(Pressure.ofPsi(2)).regulatedTo(Pressure.ofInchesWater(7));
                var began = System.nanoTime();
                var plans = LeastCostPlan.find(Sites.TABLES, layout, prices, rules);
                System.out.printf(
                        "%d segments seed %d: %.0f ms, %d states, best %s, %s, %d alternatives%n",
                        size,
                        seed,
                        (System.nanoTime() - began) / 1e6,
                        plans.proof().states(),
                        plans.best()
                                .map(plan -> plan.cost() + " " + plan.kind())
                                .orElse("none"),
                        layout.connectedLoad(),
                        plans.alternatives().size());
            }
        }
    }
}
