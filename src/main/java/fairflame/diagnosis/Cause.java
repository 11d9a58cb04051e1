package fairflame.diagnosis;

import java.util.List;
import java.util.Set;

/**
 * A fault that a heater can have.
 *
 * @param id such as {@code LD01}
 * @param title exact words for the trade
 * @param plain plain words for the customer
 * @param also other places of a fault tree where the same fault stands, such as {@code WH01} for {@code LD03}
 * @param named what a licensed person may call it in a release, besides its id and title
 * @param complaints ids of the complaints it can explain
 * @param common how often it is met, 1 to 5; invented for the demo
 * @param devices ids of the devices at fault
 * @param repairs task ids in the order they are thought of; empty when nothing is sold
 * @param remedy what is done, in words, when no task of the shop mends it; else empty
 * @param onlyWith ids of causes of which one must be settled too; empty when it stands alone
 * @param rules what speaks for and against it
 * @param source key of the source
 */
public record Cause(
        String id,
        String title,
        String plain,
        List<String> also,
        List<String> named,
        Set<String> complaints,
        int common,
        List<String> devices,
        List<String> repairs,
        String remedy,
        Set<String> onlyWith,
        List<Rule> rules,
        String source) {
    public Cause {
        also = List.copyOf(also);
        named = List.copyOf(named);
        complaints = Set.copyOf(complaints);
        devices = List.copyOf(devices);
        repairs = List.copyOf(repairs);
        onlyWith = Set.copyOf(onlyWith);
        rules = List.copyOf(rules);
    }

    /** Whether a release that names this text means this cause. */
    boolean isCalled(String text) {
        var wanted = text.strip();
        return id.equalsIgnoreCase(wanted)
                || title.equalsIgnoreCase(wanted)
                || named.stream().anyMatch(wanted::equalsIgnoreCase);
    }
}
