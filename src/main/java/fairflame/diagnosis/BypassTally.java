package fairflame.diagnosis;

import fairflame.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The counted test leads of a visit. A bridge is a momentary test by a person with a hand on the switch; the visit
 * cannot close while a lead is out. Common practice, no source.
 *
 * @param leads every lead ever placed, in the order of placing
 * @param readings what was tried with a bridge, by id of the check
 */
public record BypassTally(List<BypassLead> leads, Set<String> readings) {
    /** Devices that are never bridged: a fuse that has seen fire, and the proof of combustion air. */
    public static final Set<String> NEVER = Set.of("thermal-fuse", "rollout-fuse", "air-switch");

    public BypassTally {
        leads = List.copyOf(leads);
        readings = Set.copyOf(readings);
    }

    public static BypassTally of(CaseFile file) {
        return new BypassTally(
                file.leads(),
                file.readings().stream()
                        .filter(reading -> reading.check().startsWith("bypass-"))
                        .filter(reading -> !(reading.value() instanceof Value.NotMeasured))
                        .map(Reading::check)
                        .collect(Collectors.toUnmodifiableSet()));
    }

    /** Refuses a device that is never bridged. */
    static void admit(String device) {
        if (NEVER.contains(device)) {
            throw Refusal.notAllowed(
                    "bypass of", device, "never for a thermal or rollout fuse or an air-proving switch; measure it");
        }
    }

    /** The tally with one more lead; refuses devices that are never bridged, and a second lead on the same device. */
    public BypassTally place(String device, String by) {
        admit(device);
        if (by.isBlank()) {
            throw Refusal.missing("name of the person who places the lead", "a name");
        }
        if (out().stream().anyMatch(lead -> lead.device().equals(device))) {
            throw Refusal.notAllowed("second lead on", device, "one lead on a device");
        }
        var more = new ArrayList<>(leads);
        more.add(new BypassLead(device, by, false));
        return new BypassTally(more, readings);
    }

    /** The tally with the lead of a device back; refused when none is out on it. */
    public BypassTally remove(String device) {
        if (out().stream().noneMatch(lead -> lead.device().equals(device))) {
            throw Refusal.unknown("lead on", device, names(out()));
        }
        var after = leads.stream()
                .map(lead -> lead.device().equals(device) ? new BypassLead(device, lead.placedBy(), true) : lead)
                .toList();
        return new BypassTally(after, readings);
    }

    /** Leads placed and not recorded as removed. */
    public List<BypassLead> out() {
        return leads.stream().filter(lead -> !lead.removed()).toList();
    }

    /** Why the visit cannot close, a sentence each; empty when it may. */
    public List<String> problems() {
        var found = new ArrayList<String>();
        out().forEach(lead -> found.add("A test lead placed by " + lead.placedBy() + " still bridges " + lead.device()
                + ": take it off and record it; the visit cannot close."));
        if (!readings.isEmpty() && leads.isEmpty()) {
            found.add("A bypass was tried and no test lead is in the tally: record the lead and its removal; the visit"
                    + " cannot close.");
        }
        return List.copyOf(found);
    }

    /** Whether the tally lets the visit close. */
    public boolean mayClose() {
        return problems().isEmpty();
    }

    private static String names(List<BypassLead> leads) {
        return leads.isEmpty()
                ? "no lead is out"
                : leads.stream().map(BypassLead::device).collect(Collectors.joining(", "));
    }
}
