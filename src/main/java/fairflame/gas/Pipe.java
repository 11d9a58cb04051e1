package fairflame.gas;

import fairflame.Refusal;
import java.util.Locale;

/**
 * A kind of pipe that can be bought: material and nominal size. Whether the tables know the size is asked of
 * {@link GasTables#known(Pipe)}.
 *
 * @param size nominal size such as {@code 1-1/4}, without the word inch; for CSST the EHD such as {@code 25}
 */
public record Pipe(Material material, String size) {
    public Pipe {
        var plain = size.strip()
                .toLowerCase(Locale.ROOT)
                .replaceFirst("^ehd[ -]?", "")
                .replaceFirst("\\s*(in|\")$", "");
        if (!plain.matches("\\d{1,2}([- ]\\d{1,2}/\\d{1,2})?|\\d{1,2}/\\d{1,2}")) {
            throw Refusal.malformed(
                    "pipe size", size, "a nominal size such as 3/4 or 1-1/4, for CSST an EHD such as 25");
        }
        size = plain.replace(' ', '-');
    }

    /** As printed: {@code 1-1/4 in Schedule 40 steel}, {@code CSST of EHD 25}. */
    public String words() {
        return material == Material.CSST ? "CSST of EHD " + size : size + " in " + material.words();
    }
}
