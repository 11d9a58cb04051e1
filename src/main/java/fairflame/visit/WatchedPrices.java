package fairflame.visit;

import fairflame.gas.Pipe;
import fairflame.gas.PipePrices;
import fairflame.gas.Route;
import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices of pipe under somebody's eyes: a search for the cheapest plan, which asks for them all along, can be ended. */
final class WatchedPrices implements PipePrices {
    private final PipePrices prices;
    private final Progress progress;

    WatchedPrices(PipePrices prices, Progress progress) {
        this.prices = prices;
        this.progress = progress;
    }

    @Override
    public CurrencyUnit currency() {
        return prices.currency();
    }

    @Override
    public List<Pipe> offers() {
        progress.look();
        return prices.offers();
    }

    @Override
    public Money laid(Pipe pipe, Route route) {
        progress.look();
        return prices.laid(pipe, route);
    }

    @Override
    public Optional<Money> regulator(GasFlow flow, Pressure inlet, Pressure outlet) {
        progress.look();
        return prices.regulator(flow, inlet, outlet);
    }

    @Override
    public Optional<Money> excessFlowValve(GasFlow flow) {
        progress.look();
        return prices.excessFlowValve(flow);
    }

    @Override
    public Money once() {
        return prices.once();
    }

    @Override
    public Optional<Money> raisedDelivery() {
        return prices.raisedDelivery();
    }
}
