package fairflame.agreement;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the customer did to sign. Nothing of it is assumed.
 *
 * @param name as typed
 * @param role owner, tenant or agent
 * @param at with the zone's offset
 * @param accepted which texts were accepted by an act of their own: {@link #AUTHORISE}, {@link #ELECTRONIC}
 * @param declined what the customer said of each choice not taken, by id of the choice
 * @param strokes drawn lines as x,y pairs in thousandths of the pad's width; empty when only the name was typed
 * @param witness who took the signature
 * @param paper where it was given when the customer was away; empty when it was given on a screen
 */
public record SigningAct(
        String name,
        String role,
        OffsetDateTime at,
        Set<String> accepted,
        Map<String, String> declined,
        List<List<Integer>> strokes,
        String witness,
        Optional<OnPaper> paper) {
    /** The work is authorised for its total. */
    public static final String AUTHORISE = "authorise";
    /** Signing on a screen is agreed to, paper having been offered. */
    public static final String ELECTRONIC = "electronic";

    public SigningAct {
        accepted = Set.copyOf(accepted);
        declined = Map.copyOf(declined);
        strokes = strokes.stream().map(List::copyOf).toList();
    }

    /** An act on a screen. */
    public SigningAct(
            String name,
            String role,
            OffsetDateTime at,
            Set<String> accepted,
            Map<String, String> declined,
            List<List<Integer>> strokes,
            String witness) {
        this(name, role, at, accepted, declined, strokes, witness, Optional.empty());
    }
}
