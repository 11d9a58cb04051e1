package fairflame.diagnosis;

import java.util.Set;

/**
 * What the customer says.
 *
 * @param id such as {@code drops-out}
 * @param title exact words for the trade
 * @param plain the customer's words
 * @param releaseFirst gates of which one must be released by a licensed person before anything can settle; empty for
 *     most complaints
 * @param source key of the source
 */
public record Complaint(String id, String title, String plain, Set<String> releaseFirst, String source) {
    public Complaint {
        releaseFirst = Set.copyOf(releaseFirst);
    }
}
