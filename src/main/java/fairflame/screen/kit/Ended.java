package fairflame.screen.kit;

import fairflame.Refusal;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.StringProperty;

/**
 * Why long work came to nothing.
 *
 * @param words as they are told
 * @param refusal empty when a person ended the work
 */
public record Ended(String words, Optional<Refusal> refusal) {
    /** Work that was refused. */
    public static Ended refused(Refusal refusal) {
        return new Ended(String.valueOf(refusal.getMessage()), Optional.of(refusal));
    }

    /** Work that a person ended. */
    public static Ended stopped(String words) {
        return new Ended(words, Optional.empty());
    }

    /** Tells the words in a place. */
    public static Consumer<Ended> in(StringProperty place) {
        return ended -> place.set(ended.words());
    }
}
