package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What changes to gas piping cost, given by whoever keeps the catalog. All amounts in {@link #currency()} and above
 * zero, except {@link #once()} and {@link #raisedDelivery()}, which may be zero. No price may fall when flow or length
 * grows: the search for the cheapest plan relies on it.
 */
public interface PipePrices {
    CurrencyUnit currency();

    /** Every kind of pipe that can be laid. */
    List<Pipe> offers();

    /** Pipe, fittings and labour for a route laid in this pipe, new or in place of another. */
    Money laid(Pipe pipe, Route route);

    /** A line regulator, installed; empty when none is offered for this flow and these pressures. */
    Optional<Money> regulator(GasFlow flow, Pressure inlet, Pressure outlet);

    /** An excess-flow valve, installed; empty when none is offered for this flow. */
    Optional<Money> excessFlowValve(GasFlow flow);

    /** What comes once as soon as anything changes: permit, pressure test, fitter's trip. */
    Money once();

    /** What the change of the delivery pressure costs; empty when the supplier does not offer it. */
    Optional<Money> raisedDelivery();
}
