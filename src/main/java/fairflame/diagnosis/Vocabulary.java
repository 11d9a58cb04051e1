package fairflame.diagnosis;

import fairflame.Refusal;
import fairflame.wording.Wording;
import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The words that case files and rules may use.
 *
 * @param gates ids of the danger gates
 * @param wording what sentences say for the words that a check gives
 */
record Vocabulary(
        Map<String, Complaint> complaints,
        Map<String, Check> checks,
        Map<String, Instrument> instruments,
        Map<String, Circumstance> circumstances,
        Set<String> gates,
        Wording wording) {
    Check check(String id) {
        return known("check", id, checks);
    }

    Complaint complaint(String id) {
        return known("complaint", id, complaints);
    }

    Instrument instrument(String id) {
        return known("instrument", id, instruments);
    }

    void gate(String id) {
        if (!gates.contains(id)) {
            throw Refusal.unknown("gate", id, listed(gates));
        }
    }

    /** A tag in square brackets: a circumstance, an instrument, fast, slow, seen or told. */
    void tag(String tag) {
        var allowed = new TreeSet<>(Set.of("fast", "slow", "seen", "told"));
        allowed.addAll(circumstances.keySet());
        allowed.addAll(instruments.keySet());
        if (!allowed.contains(tag)) {
            throw Refusal.unknown("tag", tag, listed(allowed));
        }
    }

    Set<String> speedTags(String instrument) {
        return switch (instrument(instrument).speed()) {
            case FAST -> Set.of("fast");
            case SLOW -> Set.of("slow");
            case ANY -> Set.of();
        };
    }

    /** Refuses a reading with an unknown check, instrument or circumstance, or a value that its check cannot give. */
    void admit(Reading reading) {
        var check = check(reading.check());
        check.answer().admit(check.name(), reading.value());
        if (!reading.instrument().isEmpty()) {
            instrument(reading.instrument());
        }
        reading.conditions().forEach(condition -> known("condition", condition, circumstances));
    }

    /** Whether two readings were taken under loads that exclude each other and so must not be compared. */
    boolean clash(Reading one, Reading other) {
        var groups = new HashSet<String>();
        for (var condition : one.conditions()) {
            var group = known("condition", condition, circumstances).group();
            if (!group.isEmpty() && !other.conditions().contains(condition)) {
                groups.add(group);
            }
        }
        return other.conditions().stream()
                .filter(condition -> !one.conditions().contains(condition))
                .anyMatch(condition -> groups.contains(
                        known("condition", condition, circumstances).group()));
    }

    private static <T> T known(String what, String id, Map<String, T> all) {
        var found = all.get(id);
        if (found == null) {
            throw Refusal.unknown(what, id, listed(all.keySet()));
        }
        return found;
    }

    static String listed(Collection<String> ids) {
        return String.join(", ", new TreeSet<>(ids));
    }
}
