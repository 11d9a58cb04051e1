package fairflame.agreement;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * The customer's act of signing.
 *
 * @param name as typed
 * @param role owner, tenant or agent
 * @param at with the zone's offset
 * @param consent the text agreed to, word for word
 * @param strokes drawn lines as x,y pairs in thousandths of the pad's width; empty when only the name was typed
 * @param witness who took the signature
 */
public record Signature(
        String name, String role, OffsetDateTime at, String consent, List<List<Integer>> strokes, String witness) {
    public Signature {
        strokes = strokes.stream().map(List::copyOf).toList();
    }
}
