package fairflame.diagnosis;

import java.util.List;

/**
 * A cause with everything that speaks for and against it.
 *
 * @param cause id of the cause in the knowledge, such as {@code LD01}
 * @param title exact words for the trade
 * @param plain plain words for the customer
 * @param standing how far it is proved
 * @param supports reasons for it
 * @param against reasons against it
 * @param missing checks that would decide it and were not done: ids, with tags such as {@code leak-outlet[warm]}
 * @param restsOn the deciding check it is settled by, in words; empty unless settled
 * @param devices ids of the devices at fault where the readings tell, such as {@code high-limit-switch}
 * @param repairs task ids that mend it, in the order they are thought of; empty when nothing is sold for it
 */
public record Candidate(
        String cause,
        String title,
        String plain,
        Standing standing,
        List<Evidence> supports,
        List<Evidence> against,
        List<String> missing,
        String restsOn,
        List<String> devices,
        List<String> repairs) {
    public Candidate {
        supports = List.copyOf(supports);
        against = List.copyOf(against);
        missing = List.copyOf(missing);
        devices = List.copyOf(devices);
        repairs = List.copyOf(repairs);
    }

    /** A candidate that names no repairs. */
    public Candidate(
            String cause,
            String title,
            String plain,
            Standing standing,
            List<Evidence> supports,
            List<Evidence> against,
            List<String> missing,
            String restsOn,
            List<String> devices) {
        this(cause, title, plain, standing, supports, against, missing, restsOn, devices, List.of());
    }

    /** From proved to excluded. */
    public enum Standing {
        SETTLED,
        LIKELY,
        OPEN,
        RULED_OUT
    }
}
