package fairflame.gas;

import fairflame.quantity.GasFlow;
import java.util.Optional;
import org.joda.money.Money;

/**
 * One priced change to the piping.
 *
 * @param at id of the segment or appliance
 * @param was pipe that is there now; empty for something new
 * @param pipe pipe to be laid; empty where none is
 * @param route of the pipe to be laid; empty where none is
 * @param flow at full fire
 * @param words a sentence for the paper
 */
public record Change(
        Kind kind,
        String at,
        Optional<Pipe> was,
        Optional<Pipe> pipe,
        Optional<Route> route,
        GasFlow flow,
        Money price,
        String words) {
    /** What is done. */
    public enum Kind {
        /** Another pipe in place of a segment's. */
        REPLACE,
        /** A line from the source to one appliance. */
        OWN_LINE,
        /** A line regulator before a segment or an appliance. */
        REGULATOR,
        EXCESS_FLOW_VALVE,
        /** The supplier raises the delivery pressure. */
        RAISE_DELIVERY,
        /** Pipe that serves nothing any more is capped; part of the work of the own line. */
        CAP,
        /** What comes once as soon as anything changes. */
        ONCE
    }
}
