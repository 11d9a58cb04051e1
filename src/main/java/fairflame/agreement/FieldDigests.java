package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/** SHA-256 (FIPS 180-4) of bytes and of each single field of a tree. */
final class FieldDigests {
    private FieldDigests() {}

    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(sha256().digest(bytes));
    }

    static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The digest of every value, empty list and empty object, by its JSON Pointer (RFC 6901). */
    static Map<String, String> of(JsonNode tree) {
        var digests = new TreeMap<String, String>();
        walk("", tree, digests);
        return digests;
    }

    private static void walk(String path, JsonNode node, Map<String, String> digests) {
        if (node.isContainerNode() && !node.isEmpty()) {
            if (node.isArray()) {
                for (int i = 0; i < node.size(); i++) {
                    walk(path + "/" + i, node.get(i), digests);
                }
            } else {
                node.properties().forEach(entry -> walk(path + pointer(entry.getKey()), entry.getValue(), digests));
            }
        } else {
            digests.put(path, sha256(CanonicalText.write(node)));
        }
    }

    /** A name as one step of a pointer. */
    static String pointer(String name) {
        return "/" + escaped(name);
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }
}
