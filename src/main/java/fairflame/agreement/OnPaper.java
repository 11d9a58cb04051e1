package fairflame.agreement;

import fairflame.Refusal;
import java.time.LocalDate;

/**
 * A signature that was given on paper and came back as a file.
 *
 * @param dated the day that stands on the paper
 * @param returned the day on which the file was read
 * @param file name under which the file is kept with the visit
 * @param sha256 digest of the file, 64 hexadecimal digits
 */
public record OnPaper(LocalDate dated, LocalDate returned, String file, String sha256) {
    public OnPaper {
        if (dated.isAfter(returned)) {
            throw Refusal.outOfRange("date on the paper", dated, "no later than " + returned + ", the day it is read");
        }
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw Refusal.malformed("digest of the returned file", sha256, "64 hexadecimal digits");
        }
    }
}
