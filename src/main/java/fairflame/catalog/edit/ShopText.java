package fairflame.catalog.edit;

import fairflame.Refusal;
import java.util.List;
import java.util.Optional;

/** A text file of the shop under the pen. */
public sealed interface ShopText permits YamlText, CsvText {
    /** Reads a file by the ending of its name. */
    static ShopText of(String file, String text) {
        return file.endsWith(".csv") ? CsvText.parse(file, text) : YamlText.parse(file, text);
    }

    /** The text as it stands. */
    String text();

    /** All values that can be edited, in the order of the file. */
    List<Leaf> leaves();

    /** What stands at a place: the value of a field, else the source text of a row or entry. */
    Optional<String> at(Spot spot);

    /**
     * The text with one edit made.
     *
     * @throws Refusal when the place no longer holds what the edit says it held
     */
    String with(FieldEdit edit);

    /** Refuses an edit of something that is no longer as it was. */
    default void refuseUnlessStill(String file, FieldEdit edit) {
        var now = at(edit.spot());
        if (!now.equals(edit.before())) {
            throw Refusal.notAllowed(
                            "value", now.orElse("nothing"), "what was there when the change was begun: " + shown(edit))
                    .at(file + ", " + edit.spot());
        }
    }

    private static String shown(FieldEdit edit) {
        return edit.before().orElse("nothing, because it comes new");
    }
}
