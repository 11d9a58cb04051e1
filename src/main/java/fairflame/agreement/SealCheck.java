package fairflame.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fairflame.agreement.Difference.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Compares a sealed tree with its own seal and names what differs. */
final class SealCheck {
    /** Where the digest of the seal before stands among the digests of the fields. */
    static final String PREVIOUS = "/seal/previous";

    private static final Set<String> PARTS = Set.of("chain", "content", "fields", "previous");

    private final JsonNode seal;
    private final String content;
    private final Map<String, String> met;
    private final Map<String, String> sealed = new TreeMap<>();

    SealCheck(ObjectNode tree) {
        seal = tree.path("seal");
        var rest = tree.deepCopy();
        rest.remove("seal");
        content = Sealing.content(rest);
        met = FieldDigests.of(rest);
        seal.path("fields")
                .properties()
                .forEach(entry -> sealed.put(entry.getKey(), entry.getValue().asText()));
    }

    List<Difference> differences() {
        var broken = shape();
        if (!broken.isEmpty()) {
            return broken;
        }
        var previous = seal.path("previous").textValue();
        var chain = seal.path("chain").textValue();
        var intact = seal.path("content").textValue().equals(content);
        met.put(PREVIOUS, FieldDigests.sha256(previous));
        var found = fields();
        // With the content intact a digest that differs is itself the thing altered.
        var chained = chain.equals(Sealing.chain(previous, content));
        var sealedContent = seal.path("content").textValue();
        if (intact || chained) {
            return sealItself(found, chained, intact);
        }
        if (!chain.equals(Sealing.chain(previous, sealedContent))
                && found.stream().noneMatch(difference -> difference.path().equals(PREVIOUS))) {
            found.add(new Difference("/seal/chain", Kind.ALTERED));
        }
        if (found.isEmpty()) {
            found.add(new Difference("/seal/content", Kind.ALTERED));
        }
        return found;
    }

    /** The content is proved by its digest or by the chain: what differs stands in the seal. */
    private static List<Difference> sealItself(List<Difference> fields, boolean chained, boolean intact) {
        var found = new ArrayList<Difference>();
        var previousDiffers = false;
        for (var field : fields) {
            if (field.path().equals(PREVIOUS) && !chained) {
                previousDiffers = true;
                found.add(field);
            } else {
                found.add(new Difference("/seal/fields" + FieldDigests.pointer(field.path()), ofDigest(field.kind())));
            }
        }
        if (!chained && !previousDiffers) {
            found.add(new Difference("/seal/chain", Kind.ALTERED));
        }
        if (!intact) {
            found.add(new Difference("/seal/content", Kind.ALTERED));
        }
        return found;
    }

    /** A field without a digest is a digest that is missing, and the other way round. */
    private static Kind ofDigest(Kind ofField) {
        return switch (ofField) {
            case ADDED -> Kind.MISSING;
            case MISSING -> Kind.ADDED;
            default -> ofField;
        };
    }

    private List<Difference> shape() {
        var found = new ArrayList<Difference>();
        if (!seal.isObject()) {
            return List.of(new Difference("/seal", Kind.MISSING));
        }
        for (var part : new TreeSet<>(PARTS)) {
            var node = seal.path(part);
            var fits = part.equals("fields") ? node.isObject() : node.isTextual();
            if (!fits) {
                found.add(new Difference("/seal/" + part, node.isMissingNode() ? Kind.MISSING : Kind.ALTERED));
            }
        }
        seal.fieldNames().forEachRemaining(name -> {
            if (!PARTS.contains(name)) {
                found.add(new Difference("/seal" + FieldDigests.pointer(name), Kind.ADDED));
            }
        });
        return found;
    }

    private List<Difference> fields() {
        var found = new ArrayList<Difference>();
        var paths = new TreeSet<>(met.keySet());
        paths.addAll(sealed.keySet());
        for (var path : paths) {
            if (!sealed.containsKey(path)) {
                found.add(new Difference(path, Kind.ADDED));
            } else if (!met.containsKey(path)) {
                found.add(new Difference(path, Kind.MISSING));
            } else if (!sealed.get(path).equals(met.get(path))) {
                found.add(new Difference(path, Kind.ALTERED));
            }
        }
        return found;
    }
}
