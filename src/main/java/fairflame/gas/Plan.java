package fairflame.gas;

import java.util.List;
import org.joda.money.Money;

/**
 * A set of changes that makes the piping enough, with its price and its pressures.
 *
 * @param kind what carries it
 * @param cost sum of the prices of all changes
 * @param changes empty when the piping is enough as it is
 * @param after the layout with the changes made
 * @param firing pressures with everything at full fire
 * @param alone pressures with the largest appliance alone
 */
public record Plan(
        Kind kind, Money cost, List<Change> changes, Layout after, PressureProfile firing, PressureProfile alone) {
    public Plan {
        changes = List.copyOf(changes);
    }

    /** What carries a plan, for telling choices apart. */
    public enum Kind {
        NOTHING("no change"),
        LARGER_PIPE("larger pipe"),
        OWN_LINE("a line of its own"),
        RAISED_PRESSURE("higher pressure with line regulators");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Names of what changes and how; two plans with the same names are one. */
    List<String> signature() {
        return changes.stream()
                .map(change -> change.kind() + " " + change.at() + " "
                        + change.pipe().map(Pipe::words).orElse(""))
                .sorted()
                .toList();
    }
}
