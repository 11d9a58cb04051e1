package fairflame.agreement;

import fairflame.quote.LeftOutWhenEmpty;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * The customer's act of signing.
 *
 * @param name as typed
 * @param role owner, tenant or agent
 * @param at with the zone's offset
 * @param consent the text agreed to, word for word
 * @param strokes drawn lines as x,y pairs in thousandths of the pad's width; empty when only the name was typed
 * @param witness who took the signature
 * @param paper where it was given when the customer was away; empty when it was given on a screen
 */
public record Signature(
        String name,
        String role,
        OffsetDateTime at,
        String consent,
        List<List<Integer>> strokes,
        String witness,
        @LeftOutWhenEmpty Optional<OnPaper> paper) {
    public Signature {
        strokes = strokes.stream().map(List::copyOf).toList();
    }

    /** A signature given on a screen. */
    public Signature(
            String name, String role, OffsetDateTime at, String consent, List<List<Integer>> strokes, String witness) {
        this(name, role, at, consent, strokes, witness, Optional.empty());
    }
}
