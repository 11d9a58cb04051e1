package fairflame.screen.line;

import fairflame.gas.GasTables;
import fairflame.gas.Layout;
import fairflame.screen.bench.Draft;
import fairflame.visit.Progress;
import java.util.List;
import org.joda.money.Money;

/** What the line drawing asks of the use cases. */
public interface LineWork {
    /** The sizing tables. */
    GasTables tables();

    /** Priced ways to make the line of a draft enough, cheapest first; none when it is enough or cannot be planned. */
    List<Way> ways(Draft draft, Progress progress);

    /**
     * One priced way.
     *
     * @param changes what is changed, a sentence each
     * @param after the line with the changes made
     */
    record Way(String title, Money cost, List<String> changes, Layout after) {
        public Way {
            changes = List.copyOf(changes);
        }
    }
}
