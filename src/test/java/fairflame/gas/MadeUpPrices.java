package fairflame.gas;

import fairflame.quantity.GasFlow;
import fairflame.quantity.Pressure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices invented for tests: by the foot and by the fitting, dearer with the bore and by material. */
record MadeUpPrices(
        List<Pipe> offers, Money once, Optional<Money> raisedDelivery, boolean regulators, Optional<Money> valve)
        implements PipePrices {
    static final CurrencyUnit USD = CurrencyUnit.USD;

    static MadeUpPrices of(Material... materials) {
        var offers = new ArrayList<Pipe>();
        for (var material : materials) {
            offers.addAll(Sites.TABLES.offered(material));
        }
        return new MadeUpPrices(
                offers, money("380.00"), Optional.of(money("150.00")), true, Optional.of(money("60.00")));
    }

    static Money money(String text) {
        return Money.of(USD, new BigDecimal(text));
    }

    MadeUpPrices offering(List<Pipe> some) {
        return new MadeUpPrices(some, once, raisedDelivery, regulators, valve);
    }

    MadeUpPrices notRaised() {
        return new MadeUpPrices(offers, once, Optional.empty(), regulators, valve);
    }

    MadeUpPrices withoutRegulators() {
        return new MadeUpPrices(offers, once, raisedDelivery, false, valve);
    }

    MadeUpPrices withoutValves() {
        return new MadeUpPrices(offers, once, raisedDelivery, regulators, Optional.empty());
    }

    MadeUpPrices once(String amount) {
        return new MadeUpPrices(offers, money(amount), raisedDelivery, regulators, valve);
    }

    @Override
    public CurrencyUnit currency() {
        return USD;
    }

    @Override
    public Money laid(Pipe pipe, Route route) {
        var width = pipe.material() == Material.CSST
                ? Double.parseDouble(pipe.size()) / 25
                : Sites.TABLES.bore(pipe).orElseThrow().inches();
        var foot = switch (pipe.material()) {
            case STEEL_SCHEDULE_40 -> 14 + 7 * width;
            case COPPER_K, COPPER_L -> 11 + 16 * width;
            case POLYETHYLENE -> 19 + 4 * width;
            case CSST -> 9 + 12 * width;
        };
        var fitting = 12 + 9 * width;
        var sum = foot * route.length().feet() + fitting * route.fittings().number();
        return Money.of(USD, BigDecimal.valueOf(sum), RoundingMode.HALF_UP);
    }

    @Override
    public Optional<Money> regulator(GasFlow flow, Pressure inlet, Pressure outlet) {
        var price = flow.cubicFeetPerHour() <= 250 ? "145.00" : flow.cubicFeetPerHour() <= 900 ? "240.00" : "520.00";
        return regulators ? Optional.of(money(price)) : Optional.empty();
    }

    @Override
    public Optional<Money> excessFlowValve(GasFlow flow) {
        return valve;
    }
}
