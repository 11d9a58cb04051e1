package fairflame.quote;

import fairflame.money.Percent;
import fairflame.wording.Spoken;
import org.joda.money.Money;

/** The tax of one layer, or of all layers together where the place combines them. */
public record TaxAmount(@Spoken String name, Percent rate, Money base, Money amount) {}
