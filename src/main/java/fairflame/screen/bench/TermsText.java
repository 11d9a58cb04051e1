package fairflame.screen.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;

/**
 * Writes what the repair and the decision depend on into the text of a visit file. A part that needs several fields is
 * left out until all of them are typed and none is refused, so that a half-typed part hides nothing else.
 */
final class TermsText {
    private static final String REPAIR = "repair";
    private static final String SIZES = "repair.sizes.";
    private static final String WHOLE = "\\d{1,4}";

    private final Draft draft;
    private final Set<String> refused;
    private final Putting putting;

    /** Puts a field of the draft under a name. */
    interface Putting {
        void put(ObjectNode node, String name, String field);
    }

    TermsText(Draft draft, Set<String> refused, Putting putting) {
        this.draft = draft;
        this.refused = refused;
        this.putting = putting;
    }

    void into(ObjectNode top) {
        var repair = top.putObject(REPAIR);
        if (complete(Terms.FITTER_NEEDS)) {
            write(repair.putObject("fitter"), Terms.FITTER);
        }
        whole(repair, "repair.partYears");
        putting.put(repair, "raisedDelivery", "repair.raisedDelivery");
        VisitText.words(draft.get("repair.facts")).forEach(repair.withArray("facts")::add);
        draft.fields().keySet().stream()
                .filter(field -> field.startsWith(SIZES))
                .forEach(field -> putting.put(repair.withObject("/sizes"), field.substring(SIZES.length()), field));
        var decision = top.putObject("decision");
        if (complete(Terms.WARM_UP_NEEDS)) {
            write(decision.putObject("warmUp"), Terms.WARM_UP);
        }
        if (complete(Terms.NEW_HEATER)) {
            write(decision.putObject("newHeater"), Terms.NEW_HEATER);
        }
    }

    private boolean complete(List<String> fields) {
        return fields.stream().allMatch(field -> draft.has(field) && !refused.contains(field));
    }

    private void write(ObjectNode node, List<String> fields) {
        for (var field : fields) {
            if (Terms.WHOLE.contains(field)) {
                whole(node, field);
            } else {
                putting.put(node, last(field), field);
            }
        }
    }

    private void whole(ObjectNode node, String field) {
        var text = draft.get(field).strip();
        if (text.matches(WHOLE) && !refused.contains(field)) {
            node.put(last(field), Integer.parseInt(text));
        }
    }

    private static String last(String field) {
        return field.substring(field.lastIndexOf('.') + 1);
    }
}
