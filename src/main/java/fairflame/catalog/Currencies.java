package fairflame.catalog;

import fairflame.Refusal;
import org.joda.money.CurrencyUnit;

/** One shop, one currency: a file that states another one is refused before any amount of it is read. */
final class Currencies {
    private Currencies() {}

    static CurrencyUnit same(CurrencyUnit shop, CurrencyUnit stated) {
        if (!shop.equals(stated)) {
            throw Refusal.notAllowed("currency", stated.getCode(), "the shop's currency, " + shop.getCode());
        }
        return stated;
    }

    /** Refuses a file whose field {@code currency} is not the shop's; a file need not state it. */
    static void check(YamlEntry file, CurrencyUnit shop) {
        file.find("currency").ifPresent(field -> field.as(text -> same(shop, Fields.currency(text))));
    }
}
