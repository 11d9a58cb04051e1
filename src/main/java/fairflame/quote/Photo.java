package fairflame.quote;

import fairflame.Refusal;

/**
 * A photograph taken at a visit, as a quote lists it.
 *
 * @param name of the file kept with the visit
 * @param caption one line; may be empty
 * @param about id of the check or gate that it belongs to; empty for none
 * @param sha256 digest of the file, 64 hexadecimal digits
 * @param shown whether it is printed for the customer
 */
public record Photo(String name, String caption, String about, String sha256, boolean shown) {
    private static final int LONGEST = 200;

    public Photo {
        if (caption.length() > LONGEST || caption.chars().anyMatch(Character::isISOControl)) {
            throw Refusal.malformed("caption of " + name, caption, "one line of up to " + LONGEST + " characters");
        }
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw Refusal.malformed("digest of " + name, sha256, "64 hexadecimal digits");
        }
    }
}
