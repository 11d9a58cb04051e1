package fairflame.gas;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** What gas pipe is made of. Inside diameters and capacities are data, not here. */
public enum Material {
    STEEL_SCHEDULE_40("steel-schedule-40", "Schedule 40 steel"),
    COPPER_K("copper-k", "type K copper"),
    COPPER_L("copper-l", "type L copper"),
    POLYETHYLENE("polyethylene", "polyethylene"),
    /** Corrugated stainless tubing. Its sizes are equivalent hydraulic diameters (EHD); no equation holds for it. */
    CSST("csst", "CSST");

    private final String word;
    private final String words;

    Material(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** As typed in files and on the command line. */
    public String word() {
        return word;
    }

    /** As printed. */
    public String words() {
        return words;
    }

    /** The material of this name, in any letter case. */
    public static Material parse(String text) {
        var wanted = text.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(material -> material.word.equals(wanted))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("material", text, allowed()));
    }

    private static String allowed() {
        return Arrays.stream(values()).map(Material::word).collect(Collectors.joining(", "));
    }
}
