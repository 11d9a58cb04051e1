package fairflame.invoice.permit;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Where a permit stands. */
public enum PermitState {
    /** The work needs one, or it has to be asked about. */
    NEEDED,
    APPLIED,
    /** The office gave it a number. */
    ISSUED,
    /** An inspection has a day. */
    BOOKED,
    PASSED,
    FAILED,
    /** The office said that none is needed. */
    NOT_NEEDED;

    /** What may follow what. An inspection that is booked again stays booked; a failed one is booked anew. */
    private static final Map<PermitState, Set<PermitState>> NEXT = Map.of(
            NEEDED, Set.of(APPLIED, NOT_NEEDED),
            APPLIED, Set.of(ISSUED, NOT_NEEDED),
            ISSUED, Set.of(BOOKED),
            BOOKED, Set.of(BOOKED, PASSED, FAILED),
            FAILED, Set.of(BOOKED),
            PASSED, Set.of(),
            NOT_NEEDED, Set.of());

    public Set<PermitState> next() {
        return NEXT.getOrDefault(this, Set.of());
    }

    /** Nothing more has to happen. */
    public boolean settled() {
        return next().isEmpty();
    }

    /** As in files and on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static PermitState parse(String text) {
        return Arrays.stream(values())
                .filter(state -> state.word().equals(text.strip()))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("state of a permit", text.strip(), words(List.of(values()))));
    }

    static String words(java.util.Collection<PermitState> states) {
        return states.isEmpty()
                ? "nothing, it is settled"
                : states.stream().sorted().map(PermitState::word).collect(Collectors.joining(", "));
    }
}
