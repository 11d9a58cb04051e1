package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.Refusal;
import fairflame.quote.Quote;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * Seals what was signed and proves later that nothing changed. The seal is a SHA-256 of the canonical bytes, chained to
 * the seal before it, with a digest of each field so that a change can be named. A seal shows an alteration; it cannot
 * stop someone who rewrites the whole chain, which is why the customer's copy carries its digits.
 */
public final class Sealing {
    /** What the first seal of a shop follows. */
    public static final String START = "0".repeat(64);

    private static final String SEAL = "seal";
    private static final Seal NONE = new Seal("", "", "", Map.of());

    private Sealing() {}

    /**
     * Seals a signed quote.
     *
     * @param previous chain value of the seal before in this shop, {@link #START} for the first
     */
    public static SignedRevision seal(
            Quote quote, String choice, List<Declined> declined, Signature signature, String previous) {
        var open = new SignedRevision(quote, choice, declined, signature, NONE);
        return new SignedRevision(quote, choice, declined, signature, sealOf(open, previous));
    }

    /** Seals a signed change order. */
    public static ChangeOrder seal(ChangeOrder open, String previous) {
        return new ChangeOrder(
                open.number(),
                open.quote(),
                open.revision(),
                open.agreement(),
                open.reason(),
                open.added(),
                open.removed(),
                open.duties(),
                open.tests(),
                open.before(),
                open.after(),
                open.signature(),
                sealOf(open, previous));
    }

    /** Where a signed revision is not what was sealed; nothing when it is intact. */
    public static List<Difference> verify(SignedRevision signed) {
        return verify(CanonicalForm.write(signed));
    }

    /** Where a change order is not what was sealed; nothing when it is intact. */
    public static List<Difference> verify(ChangeOrder order) {
        return verify(CanonicalForm.write(order));
    }

    /** Where stored bytes of a signed revision or change order are not what was sealed; nothing when intact. */
    public static List<Difference> verify(byte[] bytes) {
        try {
            var tree = CanonicalText.read(bytes);
            if (!(tree instanceof ObjectNode object)) {
                return List.of(new Difference("", Difference.Kind.UNREADABLE));
            }
            var canonical = Arrays.equals(CanonicalText.write(tree), bytes);
            var found = new SealCheck(object).differences();
            if (!canonical && found.isEmpty()) {
                return List.of(new Difference("", Difference.Kind.NOT_CANONICAL));
            }
            return found;
        } catch (Refusal unreadable) {
            return List.of(new Difference("", Difference.Kind.UNREADABLE));
        }
    }

    /** Where seals in the order of sealing do not follow each other; the path is the position from 0. */
    public static List<Difference> verifyChain(List<Seal> seals) {
        var found = new ArrayList<Difference>();
        var previous = START;
        for (int i = 0; i < seals.size(); i++) {
            if (!seals.get(i).previous().equals(previous)) {
                found.add(new Difference("/" + i + "/seal/previous", Difference.Kind.NOT_CHAINED));
            }
            previous = seals.get(i).chain();
        }
        return found;
    }

    static String chain(String previous, String content) {
        return FieldDigests.sha256(previous + content);
    }

    static String content(JsonNode withoutSeal) {
        return FieldDigests.sha256(CanonicalText.write(withoutSeal));
    }

    private static Seal sealOf(Record open, String previous) {
        if (!previous.matches("[0-9a-f]{64}")) {
            throw Refusal.malformed("chain value of the seal before", previous, "64 hexadecimal digits");
        }
        var tree = CanonicalWriter.tree(open);
        tree.remove(SEAL);
        var content = content(tree);
        var fields = FieldDigests.of(tree);
        fields.put(SealCheck.PREVIOUS, FieldDigests.sha256(previous));
        return new Seal(content, previous, chain(previous, content), fields);
    }
}
