package fairflame.quote;

import fairflame.money.Percent;
import org.joda.money.Money;

/** The tax of one layer, or of all layers together where the place combines them. */
public record TaxAmount(String name, Percent rate, Money base, Money amount) {}
