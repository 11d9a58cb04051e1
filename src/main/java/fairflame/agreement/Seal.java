package fairflame.agreement;

import java.util.Map;

/**
 * Proof that nothing changed since signing.
 *
 * @param content SHA-256 of the canonical bytes of quote, choice, declined choices and signature, hexadecimal
 * @param previous {@code chain} of the seal before in this shop, or 64 zeros for the first
 * @param chain SHA-256 over {@code previous} and {@code content}: the number printed short on every page
 * @param fields digest of each field by path, so that a change can be named
 */
public record Seal(String content, String previous, String chain, Map<String, String> fields) {
    public Seal {
        fields = Map.copyOf(fields);
    }

    /** The first twelve digits, for paper. */
    public String brief() {
        return chain.substring(0, 12);
    }
}
