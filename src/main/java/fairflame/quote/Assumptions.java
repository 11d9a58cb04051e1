package fairflame.quote;

import fairflame.catalog.Jurisdiction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What the paper has to own up to: the rules of the place that nobody has checked. */
final class Assumptions {
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("codes", "adopted codes"),
            Map.entry("permits", "permits"),
            Map.entry("permitFee", "permit fee"),
            Map.entry("testTap", "who may open a gas test tap"),
            Map.entry("gasLicence", "gas licence"),
            Map.entry("gasTest", "pressure test of gas piping"),
            Map.entry("tax", "sales tax"),
            Map.entry("deposit", "deposit"),
            Map.entry("validityDays", "how long a quote holds"),
            Map.entry("cancel", "right to cancel"));

    private Assumptions() {}

    /** A sentence, or none when every rule of the place is known. */
    static List<String> of(Jurisdiction place) {
        var sentences = new ArrayList<String>();
        if (!place.unknown().isEmpty()) {
            var fields = new TreeSet<>(place.unknown())
                    .stream().map(field -> WORDS.getOrDefault(field, field)).collect(Collectors.joining(", "));
            sentences.add(
                    "Not checked for this place, the cautious rule is assumed (" + place.name() + "): " + fields + ".");
        }
        return sentences;
    }
}
