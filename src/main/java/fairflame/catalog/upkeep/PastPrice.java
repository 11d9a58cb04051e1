package fairflame.catalog.upkeep;

import java.time.LocalDate;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What a part has cost.
 *
 * @param since day of the import; the price before the first import has the day of that import too
 * @param from file of the price list, or "the shop's folder"
 */
public record PastPrice(LocalDate since, Money cost, Optional<Money> listPrice, String from) {}
