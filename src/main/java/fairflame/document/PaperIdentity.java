package fairflame.document;

import fairflame.Refusal;

/**
 * Which quote a paper is of.
 *
 * @param quote number
 * @param digest SHA-256 of the canonical quote, 64 hexadecimal digits
 * @param paper name of the file that was sent
 */
public record PaperIdentity(String quote, int revision, String digest, String paper) {
    private static final String BETWEEN = "|";
    private static final int PARTS = 4;

    /** As it stands in the paper's field. */
    public String text() {
        return String.join(BETWEEN, quote, Integer.toString(revision), digest, paper);
    }

    /** Reads the text of the field; refused when it is not such a text. */
    public static PaperIdentity parse(String text) {
        var parts = text.split("\\|", -1);
        if (parts.length != PARTS || !parts[1].matches("[1-9]\\d{0,5}") || !parts[2].matches("[0-9a-f]{64}")) {
            throw Refusal.malformed(
                    "field '" + AnswerSheet.IDENTITY + "' of the returned paper",
                    text,
                    "what this program wrote there");
        }
        return new PaperIdentity(parts[0], Integer.parseInt(parts[1]), parts[2], parts[3]);
    }
}
