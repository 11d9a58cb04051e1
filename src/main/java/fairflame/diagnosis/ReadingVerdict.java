package fairflame.diagnosis;

import fairflame.quantity.Measure;
import java.util.List;
import java.util.Optional;

/**
 * What one reading is worth on its own: the data of a gauge on paper and screen.
 *
 * @param reading as taken
 * @param title of its check
 * @param verdict the worst of all that may be said
 * @param words every reason of that verdict, plain sentences; at least one
 * @param allowedLow lower end of the allowed band in the unit of the reading; empty when there is none
 * @param allowedHigh upper end of the allowed band
 * @param sources keys of the sources, in the order of the words
 */
public record ReadingVerdict(
        Reading reading,
        String title,
        Verdict verdict,
        List<String> words,
        Optional<Measure> allowedLow,
        Optional<Measure> allowedHigh,
        List<String> sources) {
    public ReadingVerdict {
        words = List.copyOf(words);
        sources = List.copyOf(sources);
    }

    /** From harmless to worst: where several rules speak, the last of these that any of them says wins. */
    public enum Verdict {
        /** Nothing to judge. */
        INFORMATION("information"),
        /** Within the band. */
        GOOD("good"),
        /** At the edge of the band, or unusual. */
        EDGE("at the edge"),
        /** Cannot be taken at its word, or cannot be judged yet. */
        DOUBTED("doubted"),
        /** Outside the band. */
        OUTSIDE("outside");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
