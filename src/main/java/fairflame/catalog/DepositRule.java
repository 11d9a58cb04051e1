package fairflame.catalog;

import fairflame.money.Percent;
import java.util.Optional;
import org.joda.money.Money;

/**
 * What the shop asks at signing and the most that the place allows. Of percent and amount the lesser counts; a cap is
 * rounded down to the cent.
 *
 * @param asked share of the total that the shop asks
 */
public record DepositRule(Percent asked, Optional<Percent> capPercent, Optional<Money> capAmount, String source) {}
