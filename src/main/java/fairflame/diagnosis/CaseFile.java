package fairflame.diagnosis;

import fairflame.gas.Reconciliation;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything known at the heater, in no particular order.
 *
 * @param complaint id of the complaint, such as {@code drops-out}
 * @param plate what the data plate says
 * @param gates answers by gate id; a gate without an entry was not asked
 * @param readings all readings; the order never changes a finding
 * @param leads every bypass lead ever placed on this visit
 * @param releases licensed releases of gates
 * @param pipe the measured dip against the computed one, once the layout of the gas line is known
 */
public record CaseFile(
        String complaint,
        RatingPlate plate,
        Map<String, GateAnswer> gates,
        List<Reading> readings,
        List<BypassLead> leads,
        List<Release> releases,
        Optional<Reconciliation> pipe) {
    public CaseFile {
        gates = Map.copyOf(gates);
        readings = List.copyOf(readings);
        leads = List.copyOf(leads);
        releases = List.copyOf(releases);
    }

    /** The same case with the gas line's reconciliation. */
    public CaseFile withPipe(Reconciliation reconciliation) {
        return new CaseFile(complaint, plate, gates, readings, leads, releases, Optional.of(reconciliation));
    }

    /** Test leads placed and not yet recorded as removed. */
    public long leadsStillPlaced() {
        return leads.stream().filter(lead -> !lead.removed()).count();
    }
}
