package fairflame.wording;

import fairflame.Refusal;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A language that a customer can read. */
public enum Language {
    ENGLISH("en"),
    SPANISH("es");

    private final String code;

    Language(String code) {
        this.code = code;
    }

    /** The code of ISO 639-1, as in files and the name of a folder. */
    public String code() {
        return code;
    }

    /** The language of a code; refused when it is not one of these. */
    public static Language of(String code) {
        return Arrays.stream(values())
                .filter(language -> language.code.equals(code.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> Refusal.unknown("language", code, codes()));
    }

    /** The codes of all languages, for a message. */
    public static String codes() {
        return Arrays.stream(values()).map(Language::code).collect(Collectors.joining(", "));
    }
}
