package fairflame.visit;

import java.util.List;
import java.util.regex.Pattern;

/** Tells English sentences by the small words that no Spanish sentence has. */
final class EnglishWords {
    private static final Pattern SMALL = Pattern.compile(
            "(?i)(?<![\\p{L}@.])(the|of|and|is|are|was|were|with|for|from|not|this|that|it|its|by|at|to|your|you|we|our|"
                    + "which|before|after|while|each|every|than|then|has|have|been|will|only|under|over|gas line|"
                    + "licensed|heater|switch|both|one|work|pipe|paid|card|payment|invoice|yes)(?![\\p{L}@])");

    private EnglishWords() {}

    /** The sentences among these that have an English word. */
    static List<String> in(List<String> sentences) {
        return sentences.stream().filter(EnglishWords::in).toList();
    }

    static boolean in(String sentence) {
        return SMALL.matcher(sentence).find();
    }
}
