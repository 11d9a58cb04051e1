package fairflame.catalog;

import org.joda.money.Money;

/**
 * What the shop charges in a place that it has no profile for. Everything else of such a place takes the cautious side
 * by itself; money cannot, so the shop has to state it.
 *
 * @param tax never without layers: an unknown place is not a free one
 * @param permitFee allowance for the permit, charged as its own line
 */
public record UnknownPlace(TaxRule tax, Money permitFee, String source) {}
