package fairflame.gas;

import java.util.List;
import java.util.Optional;

/**
 * The cheapest plan and the next best of other kinds.
 *
 * @param best empty when nothing that is offered makes the piping enough
 * @param alternatives the cheapest of each other kind and of each material, dearest last, none twice
 * @param proof how much was weighed
 * @param notes what was left out and why, and what else the reader has to know
 */
public record PlanChoices(Optional<Plan> best, List<Plan> alternatives, Proof proof, List<String> notes) {
    public PlanChoices {
        alternatives = List.copyOf(alternatives);
        notes = List.copyOf(notes);
    }

    /**
     * What the search did.
     *
     * @param states combinations of cost, load and pressure that were kept; all others are worse than one of these
     * @param searches exact searches that the choices come from
     */
    public record Proof(long states, int searches) {}
}
