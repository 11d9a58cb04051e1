package fairflame.diagnosis;

import java.util.LinkedHashMap;
import java.util.Map;

/** The shipped knowledge files, changed here and there for a test. */
final class KnowledgeTexts {
    private final Map<String, String> files = new LinkedHashMap<>(Knowledge.shippedFiles());

    /** Replaces the first occurrence of a text, which must be there. */
    KnowledgeTexts replace(String file, String from, String to) {
        var text = files.get(file);
        int at = text.indexOf(from);
        if (at < 0) {
            throw new AssertionError(file + " does not hold: " + from);
        }
        files.put(file, text.substring(0, at) + to + text.substring(at + from.length()));
        return this;
    }

    KnowledgeTexts append(String file, String more) {
        files.merge(file, more, String::concat);
        return this;
    }

    KnowledgeTexts without(String file) {
        files.remove(file);
        return this;
    }

    Map<String, String> files() {
        return files;
    }
}
