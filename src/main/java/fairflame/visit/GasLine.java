package fairflame.visit;

import fairflame.gas.Firing;
import fairflame.gas.Layout;
import fairflame.gas.Measured;
import fairflame.gas.PlanChoices;
import fairflame.gas.Reconciliation;
import fairflame.gas.Tolerance;
import fairflame.quantity.Pressure;
import java.util.Optional;

/** What can be asked about a gas line: the cheapest fix at the shop's prices, and whether pipe explains a dip. */
public final class GasLine {
    private final Library library;

    public GasLine(Library library) {
        this.library = library;
    }

    /**
     * The cheapest set of changes and its alternatives.
     *
     * @param place id of the jurisdiction, for permit and rates
     * @param raised delivery pressure that the gas supplier has agreed to; without it none is weighed
     */
    public PlanChoices plan(Layout layout, String place, Optional<Pressure> raised) {
        return plan(layout, place, raised, Progress.UNWATCHED);
    }

    /** As {@link #plan(Layout, String, Optional)}; who looks on can end the search at every price it asks for. */
    public PlanChoices plan(Layout layout, String place, Optional<Pressure> raised, Progress progress) {
        return PipeWork.choices(layout, library, library.shop().jurisdiction(place), raised, progress);
    }

    /**
     * Measured pressures at an appliance held against the layout.
     *
     * @param allFiring whether everything fired during the reading, or the appliance alone
     */
    public Reconciliation reconcile(Layout layout, String appliance, Measured measured, boolean allFiring) {
        var firing = allFiring ? Firing.all(layout) : Firing.alone(layout, appliance);
        return Reconciliation.of(library.tables(), layout, appliance, firing, measured, Tolerance.usual());
    }
}
